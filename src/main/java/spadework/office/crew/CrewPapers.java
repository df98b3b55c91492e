// SPDX-License-Identifier: Apache-2.0
package spadework.office.crew;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.job.Agreed;
import spadework.job.AsBuilt;
import spadework.job.BuiltPipe;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.HomeownerPapers;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.office.Refusal;
import spadework.office.files.PaperFolder;
import spadework.office.reply.Reply;
import spadework.office.start.JobEdit;
import spadework.paperwork.Dossier;
import spadework.paperwork.crew.CrewHold;
import spadework.paperwork.crew.CrewHolds;
import spadework.paperwork.crew.CrewLog;
import spadework.paperwork.crew.CrewSheet;
import spadework.paperwork.crew.CrewSheetPaper;
import spadework.paperwork.crew.LogRow;
import spadework.paperwork.scope.ScopePaper;
import spadework.paperwork.scope.ScopeSteps;
import spadework.press.svg.SquareCode;
import spadework.schedule.CrewCalendar;
import spadework.wording.Wording;

/** Prints what the crew takes to the trench, and takes its log back into the job. */
public final class CrewPapers {
    private static final Wording WORDS = Wording.beside(CrewPapers.class);
    /** Of what goes to the crew: nothing in it says what anything costs. */
    private static final String FOLDER = "for-the-crew";

    private static final String SHEET = "crew-sheet";
    /** The same to be read on a phone. */
    private static final String PHONE = "crew-sheet-phone";

    /** The scope of work, to whose pages the codes at the hold points lead. */
    private static final String SCOPE = PaperKind.SCOPE.file() + ".pdf";

    /** Side of a code at a hold point, in points. */
    private static final double CODE = 62;

    private static final String LOG = "crew-log.csv";
    private static final String STARTED = "started";

    private final Office office;

    public CrewPapers(Office office) {
        this.office = office;
    }

    /**
     * Prints the crew's sheet, as page, as page for a phone and as workbook, the scope of work that its codes lead
     * into, and the blank log, of the day since which the work is agreed.
     *
     * @param out the folder into which the job's papers go
     * @throws IOException if a file cannot be read or written
     */
    public Outcome print(Path job, Path out) throws IOException {
        return print(job, bid -> Agreed.on(bid.dossier().job()), out);
    }

    /**
     * The same of another day.
     *
     * @param on the day that they carry
     * @throws IOException if a file cannot be read or written
     */
    public Outcome print(Path job, LocalDate on, Path out) throws IOException {
        return print(job, bid -> on, out);
    }

    private Outcome print(Path job, Function<Bid, LocalDate> day, Path out) throws IOException {
        BidResult answer = office.bid(job);
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        if (!bid.openStops().isEmpty()) {
            return new Outcome.Stopped(
                    bid.openStops().stream().map(office::described).toList());
        }
        LocalDate on = day.apply(bid);
        Dossier dossier = office.forCrew(bid);
        CrewCalendar calendar = calendar(dossier);
        CrewSheet sheet = CrewSheetPaper.of(dossier, calendar, on);
        byte[] scope = office.page(bid, PaperKind.SCOPE);
        Map<String, Object> model = model(bid, sheet, scope);
        String language = sheet.language().tag();
        Map<String, byte[]> files = new LinkedHashMap<>(office.printedApart(bid, SHEET, model, on, language));
        files.put(PHONE + ".pdf", office.pageApart(bid, PHONE, model, on, language));
        files.put(SCOPE, scope);
        files.put(LOG, CrewLogFile.blank(CrewLog.of(dossier, calendar), sheet.language()));
        return new Outcome.Printed(PaperFolder.write(out, dossier.job().number(), FOLDER, files));
    }

    /** The sheet with its hold points, and the code of each by what it says. */
    private static Map<String, Object> model(Bid bid, CrewSheet sheet, byte[] scope) throws IOException {
        ScopeSteps steps = ScopePaper.steps(HomeownerPapers.words(bid.dossier(), "scope"));
        List<CrewHold> holds = CrewHolds.of(ScopeHolds.of(steps, scope), SCOPE, sheet.language());
        Map<String, String> codes = new TreeMap<>();
        holds.forEach(hold -> codes.put(hold.link(), SquareCode.of(hold.link(), hold.alternative(), CODE)));
        return Map.of("crew", sheet, "holds", holds, "codes", codes);
    }

    /**
     * Takes a filled log into the job as what was built. What is left blank stays as it is in the job.
     *
     * @throws IOException if a file cannot be read or written
     */
    public Reply take(Path job, Path log) throws IOException {
        BidResult answer = office.bid(job);
        if (answer instanceof Refusal refusal) {
            return refused(refusal.faults());
        }
        Dossier dossier = office.forCrew((Bid) answer);
        List<LogRow> rows = CrewLog.of(dossier, calendar(dossier)).stream()
                .flatMap(part -> part.rows().stream())
                .toList();
        Set<String> known = rows.stream().map(LogRow::key).collect(Collectors.toSet());
        CrewLogFile.Filled filled =
                CrewLogFile.read(log.toString(), Files.readString(log, StandardCharsets.UTF_8), known);
        if (!filled.faults().isEmpty()) {
            return refused(filled.faults());
        }
        if (filled.values().isEmpty()) {
            return refused(List.of(new Fault(
                    Place.ofFile(log.toString()),
                    "nothing filled in",
                    WORDS.get("allowed.empty"),
                    WORDS.get("fix.empty"))));
        }
        Optional<AsBuilt> before = dossier.job().agreement().asBuilt();
        Map<String, String> values = new LinkedHashMap<>(filled.values());
        rows.stream()
                .filter(row ->
                        isLengthOfUnrecordedPipe(row, before.map(AsBuilt::pipes).orElse(List.of())))
                .forEach(row -> values.putIfAbsent(row.key(), row.planned()));
        Reply reply = new JobEdit(office).built(job, values);
        boolean lacksStart = before.isEmpty() && !values.containsKey(STARTED);
        return reply.done() || !lacksStart ? reply : withoutStart(reply, log);
    }

    /** Who fills in a table is told of its row, and not of a key in the job's file. */
    private static Reply withoutStart(Reply reply, Path log) {
        Fault fault = new Fault(
                Place.ofFile(log.toString()),
                WORDS.get("found.started"),
                WORDS.get("allowed.started"),
                WORDS.get("fix.started"));
        return new Reply(
                reply.out(),
                reply.err().stream()
                        .map(line -> line.contains(" /asBuilt/started: ") ? fault.text() : line)
                        .toList(),
                false);
    }

    /** What is left blank counts as planned; a pipe's length is not in the job file, but in the takeoff. */
    private static boolean isLengthOfUnrecordedPipe(LogRow row, List<BuiltPipe> recorded) {
        return recorded.stream().noneMatch(pipe -> row.key().equals("pipes/" + pipe.label() + "/length"))
                && row.key().startsWith("pipes/")
                && row.key().endsWith("/length");
    }

    private static Reply refused(List<Fault> faults) {
        return new Reply(List.of(), faults.stream().map(Fault::text).toList(), false);
    }

    private static CrewCalendar calendar(Dossier dossier) {
        return CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff());
    }
}
