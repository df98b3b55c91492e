// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spadework.disk.ChangedElsewhere;
import spadework.disk.Disk;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.draft.Pointer;
import spadework.intake.Intake;
import spadework.intake.Reading;
import spadework.intake.Refused;
import spadework.office.files.JobFile;
import spadework.office.reply.Reply;

/**
 * Starts a bid for a new customer from an old one. What was looked at or leveled at the other house is not taken over:
 * the answer tells what has to be filled in.
 */
public final class Copying {

    /** What may be taken over. */
    public enum Take {
        /** Walls, corners, pipes and restoration, without conditions and levels. */
        WALLS(List.of("/walls", "/corners", "/water", "/restoration")),
        /** Line items put in by hand, and prices of their own. */
        ITEMS(List.of("/items", "/priceChanges")),
        /** How long the price stands, payments, warranty, what is excluded and assumed, protection, terms. */
        TERMS(List.of("/validDays", "/payments", "/warranty", "/excluded", "/assumed", "/protection", "/terms"));

        private final List<String> places;

        Take(List<String> places) {
            this.places = places;
        }
    }

    private static final List<String> PIPES = List.of("/water/drains", "/water/mains", "/water/roofLines");
    private static final List<String> LEVELS = List.of("startInvert", "endInvert", "startGrade", "endGrade");
    private static final List<String> OF_OUTLETS =
            List.of("level", "waterLevel", "fromHouse", "fromLotLine", "permission");

    private Copying() {}

    /**
     * Copies a bid.
     *
     * @param target the new file, or its folder; it must not be there
     * @throws IOException if the old file cannot be read as one JSON object, or the new one cannot be written
     */
    public static Reply copy(Path job, Path target, String number, String customer, LocalDate on, EnumSet<Take> take)
            throws IOException {
        Path from = Intake.fileOf(job);
        Path to = target.toString().endsWith(".json") ? target : target.resolve("job.json");
        if (Files.exists(to)) {
            return new Reply(List.of(), List.of(to + " is there already; nothing was written."), false);
        }
        Draft old = Draft.read(Files.readString(from))
                .orElseThrow(() -> new IOException(from + " is not one JSON object, each key once"));
        Draft copy = JobFile.blank();
        for (String place : List.of("/$schema", "/title")) {
            copy = old.at(place).isPresent() ? copy.with(place, old.at(place).get()) : copy;
        }
        copy = copy.typed("/number", number).typed("/issued", on.toString()).typed("/customer/names/0", customer);
        for (Take part : take) {
            for (String place : part.places) {
                copy = old.at(place).isPresent()
                        ? copy.with(place, old.at(place).get())
                        : copy;
            }
        }
        copy = take.contains(Take.WALLS) ? unlooked(copy) : withoutWallItems(copy);
        try {
            SharedFile.replace(folder(to), Snapshot.NONE, copy.text().getBytes(StandardCharsets.UTF_8));
        } catch (ChangedElsewhere other) {
            return new Reply(List.of(), List.of(to + " is there already; nothing was written."), false);
        }
        Reading reading = new Intake().read(to);
        List<String> out = new ArrayList<>(List.of(to.toString()));
        if (reading instanceof Refused refused) {
            out.add("To fill in:");
            refused.faults().forEach(fault -> out.add("  " + fault.text()));
        }
        return Reply.done(out);
    }

    private static Path folder(Path file) throws IOException {
        Path whole = file.toAbsolutePath();
        Disk.folders(whole.getParent());
        return whole;
    }

    private static Draft unlooked(Draft draft) {
        Draft copy = draft;
        for (int i = 0; i < draft.rows("/walls"); i++) {
            copy = copy.without("/walls/" + i + "/condition");
        }
        for (String pipes : PIPES) {
            copy = without(copy, pipes, LEVELS);
        }
        return without(copy, "/water/outlets", OF_OUTLETS).without("/water/candidates");
    }

    private static Draft without(Draft draft, String list, List<String> keys) {
        Draft copy = draft;
        for (int i = 0; i < draft.rows(list); i++) {
            for (String key : keys) {
                copy = copy.without(Pointer.of(Pointer.of(list, i), key));
            }
        }
        return copy;
    }

    /** Items of a wall that is not taken over have no place. */
    private static Draft withoutWallItems(Draft draft) {
        Set<String> sections = new HashSet<>(List.of("drain", "roof water", "ground", "setup"));
        List<DraftValue> kept = new ArrayList<>();
        for (int i = 0; i < draft.rows("/items"); i++) {
            if (sections.contains(draft.shown("/items/" + i + "/section"))) {
                kept.add(draft.at("/items/" + i).orElseThrow());
            }
        }
        return kept.isEmpty() ? draft.without("/items") : draft.with("/items", new DraftValue.Rows(kept));
    }
}
