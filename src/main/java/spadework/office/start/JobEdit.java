// SPDX-License-Identifier: Apache-2.0
package spadework.office.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.draft.AsBuiltStart;
import spadework.draft.Draft;
import spadework.finding.Fault;
import spadework.intake.Intake;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Refusal;
import spadework.office.records.JobRecords;
import spadework.office.reply.Reply;
import spadework.office.start.PartPath.NoSuchRow;
import spadework.office.start.PartPath.Place;
import spadework.wording.Wording;

/**
 * Changes a job's file value by value. Nothing is written that gives the file a fault it did not have, and what was
 * agreed in a signed contract is left alone.
 */
public final class JobEdit {
    private static final Wording WORDS = Wording.beside(JobEdit.class);

    /** What may still be written into the file of a signed contract. */
    private static final Set<String> AFTER_SIGNING =
            Set.of("received", "asBuilt", "notes", "photos", "changes", "acceptedStops", "signing");

    private final Office office;

    public JobEdit(Office office) {
        this.office = office;
    }

    /** A change of a job's draft. */
    private interface Change {
        Draft of(Draft job) throws NoSuchRow;
    }

    /**
     * Writes values where they are named; one without text takes the value out.
     *
     * @throws IOException if the file cannot be read or written
     */
    public Reply set(Path job, Map<String, String> values) throws IOException {
        return changed(job, draft -> typed(draft, "", values, false));
    }

    /**
     * Adds a part.
     *
     * @param values of the part, by their place in it
     * @throws IOException if the file cannot be read or written
     */
    public Reply add(Path job, JobPart part, Map<String, String> values) throws IOException {
        return changed(job, draft -> {
            String row = part.row(draft);
            Draft begun = part.begun(draft, row);
            String label = part.label(draft);
            if (!label.isEmpty() && !values.containsKey("label")) {
                begun = begun.typed(row + "/label", label);
            }
            return typed(begun, row, values, part == JobPart.AS_BUILT);
        });
    }

    /**
     * Writes down what was built. The record begins as agreed, so that only what was found is named.
     *
     * @param values by their place below {@code asBuilt}; rows by what names them
     * @throws IOException if the file cannot be read or written
     */
    public Reply built(Path job, Map<String, String> values) throws IOException {
        return changed(job, draft -> typed(AsBuiltStart.begun(draft), "/asBuilt", values, true));
    }

    private static Draft typed(Draft job, String above, Map<String, String> values, boolean makes) throws NoSuchRow {
        Draft changed = job;
        for (Map.Entry<String, String> value : values.entrySet()) {
            Place place = new PartPath(value.getKey()).in(changed, above, makes);
            for (Map.Entry<String, String> name : place.names().entrySet()) {
                changed = changed.typed(name.getKey(), name.getValue());
            }
            changed = changed.typed(place.pointer(), value.getValue());
        }
        return changed;
    }

    private Reply changed(Path job, Change change) throws IOException {
        Path file = Intake.fileOf(job);
        return SharedFile.alone(file, () -> changedAlone(file, change));
    }

    private Reply changedAlone(Path file, Change change) throws IOException {
        Snapshot basis = Snapshot.of(file);
        String text = basis.text().orElseThrow(() -> new NoSuchFileException(file.toString()));
        Draft before =
                Draft.read(text).orElseThrow(() -> new IOException(file + " is not one JSON object, each key once"));
        Draft after;
        try {
            after = change.of(before);
        } catch (NoSuchRow row) {
            return new Reply(List.of(), List.of(file + ": " + row.getMessage()), false);
        }
        List<String> wrong = agreed(file, before, after);
        if (!wrong.isEmpty()) {
            return new Reply(List.of(), wrong, false);
        }
        BidResult was = office.bid(text, file);
        BidResult is = office.bid(after.text(), file);
        List<String> faults = newFaults(was, is);
        if (!faults.isEmpty()) {
            return new Reply(List.of(), faults, false);
        }
        SharedFile.replace(file, basis, after.text().getBytes(StandardCharsets.UTF_8));
        List<String> out = new ArrayList<>(List.of(file.toString()));
        out.addAll(totals(was, is));
        return Reply.done(out);
    }

    /** What a signed contract keeps from being changed. */
    private static List<String> agreed(Path file, Draft before, Draft after) throws IOException {
        if (JobRecords.beside(file).contract().isEmpty()) {
            return List.of();
        }
        return Stream.concat(before.keys().stream(), after.keys().stream())
                .distinct()
                .filter(key -> !AFTER_SIGNING.contains(key))
                .filter(key -> !before.at("/" + key).equals(after.at("/" + key)))
                .map(key -> file + ": found another \"" + key
                        + "\"; allowed: what a signed contract leaves open;"
                        + " fix: write a change order under \"changes\"")
                .toList();
    }

    /** The faults that the file did not have before: a job that is being filled in may still lack something. */
    private static List<String> newFaults(BidResult was, BidResult is) {
        Set<String> known = new HashSet<>();
        if (was instanceof Refusal refusal) {
            refusal.faults().forEach(fault -> known.add(what(fault)));
        }
        return is instanceof Refusal refusal
                ? refusal.faults().stream()
                        .filter(fault -> !known.contains(what(fault)))
                        .map(Fault::text)
                        .toList()
                : List.of();
    }

    private static String what(Fault fault) {
        return fault.place().pointer() + " " + fault.found();
    }

    private static List<String> totals(BidResult was, BidResult is) {
        if (!(is instanceof Bid now)) {
            return List.of(WORDS.get("job-edit.no-price-yet-see"));
        }
        String total = now.total().text();
        return was instanceof Bid before && !before.total().equals(now.total())
                ? List.of("Total " + before.total().text() + " → " + total)
                : List.of("Total " + total);
    }
}
