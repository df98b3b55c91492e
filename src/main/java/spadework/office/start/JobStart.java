// SPDX-License-Identifier: Apache-2.0
package spadework.office.start;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.disk.ChangedElsewhere;
import spadework.disk.Disk;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.draft.Draft;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Refusal;
import spadework.office.reply.Reply;
import spadework.office.start.PartPath.NoSuchRow;
import spadework.wording.Wording;

/** Starts a job that prices at once: one wall, its drain and an outlet, with example measures to write over. */
public final class JobStart {
    private static final Wording WORDS = Wording.beside(JobStart.class);

    private static final int DAYS_AHEAD = 21;
    private static final int WINDOW_DAYS = 18;

    private JobStart() {}

    /**
     * Writes the file of a job.
     *
     * @param job the folder of the job, or its file; it must not be there
     * @param given values by their place in the job's file, as {@code site/address/city}
     * @param today the day that the job carries
     * @throws IOException if a file cannot be read or written
     */
    public static Reply job(Office office, Path job, Map<String, String> given, LocalDate today) throws IOException {
        Path file = job.toString().endsWith(".json") ? job : job.resolve("job.json");
        if (Files.exists(file)) {
            return new Reply(List.of(), List.of(file + " is there already."), false);
        }
        Path folder = file.toAbsolutePath().getParent();
        Optional<Path> firm = FirmStart.near(folder);
        if (firm.isEmpty()) {
            return new Reply(
                    List.of(),
                    List.of("found no company.json in " + folder + " or above; allowed: a job inside the folder of a"
                            + " firm; fix: spadework new firm DIR"),
                    false);
        }
        Draft draft = started(folder, firm.get(), today);
        try {
            for (Map.Entry<String, String> value : given.entrySet()) {
                draft = draft.typed(
                        new PartPath(value.getKey()).in(draft, "", false).pointer(), value.getValue());
            }
        } catch (NoSuchRow row) {
            return new Reply(List.of(), List.of(row.getMessage()), false);
        }
        BidResult bid = office.bid(draft.text(), file);
        if (bid instanceof Refusal refusal) {
            return Reply.refused(refusal.faults());
        }
        Disk.folders(folder);
        try {
            SharedFile.replace(
                    file.toAbsolutePath(), Snapshot.NONE, draft.text().getBytes(StandardCharsets.UTF_8));
        } catch (ChangedElsewhere other) {
            return new Reply(List.of(), List.of(file + " is there already."), false);
        }
        List<String> out = new ArrayList<>(List.of(file.toString()));
        out.add(WORDS.get(
                "job-start.total-for-example-measures", ((Bid) bid).total().text()));
        out.add("  spadework set " + job + " customer/names=\"Your Customer\" walls/A/length=\"38 ft 6 in\"");
        out.add("  spadework add wall " + job + " where=\"side wall\" faces=east length=\"26 ft\" depth=\"5 ft\"");
        out.add("or fill it in with: spadework form " + job);
        return Reply.done(out);
    }

    private static Draft started(Path folder, Path firm, LocalDate today) throws IOException {
        LocalDate start = today.plusDays(DAYS_AHEAD).with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY));
        String schema = folder.relativize(firm.resolve("schemas/job.schema.json"))
                .toString()
                .replace('\\', '/');
        try (InputStream in = JobStart.class.getResourceAsStream("/spadework/office/start-job.json")) {
            return Draft.read(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .orElseThrow()
                    .typed("/$schema", schema)
                    .typed("/number", folder.getFileName().toString())
                    .typed("/issued", today.toString())
                    .typed("/schedule/earliestStart", start.toString())
                    .typed("/schedule/latestFinish", start.plusDays(WINDOW_DAYS).toString());
        }
    }
}
