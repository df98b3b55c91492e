// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spadework.office.Bid;
import spadework.paperwork.Dossier;
import spadework.paperwork.crew.CrewHold;
import spadework.paperwork.crew.CrewHolds;
import spadework.paperwork.crew.CrewSheet;
import spadework.paperwork.crew.CrewSheetPaper;
import spadework.paperwork.crew.HoldStep;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.scope.ScopeOfWork;
import spadework.paperwork.scope.ScopePaper;
import spadework.paperwork.scope.ScopeStep;
import spadework.paperwork.scope.StepEvidence;
import spadework.samples.GeneratedBids;
import spadework.samples.SpanishDossiers;
import spadework.schedule.CrewCalendar;

/**
 * Steps, notes and crew sheets of jobs by seed, which ask for more of the rules than the samples do: no English is left
 * in them.
 */
class SpanishScopeTest {
    /** As they are written in the United States. */
    private static final List<String> UNITS = List.of("gal", "ton");

    private static final Path WORDS = Path.of("templates/words");

    private static final Path CREW = Path.of("src/main/resources/spadework/paperwork/crew");

    @Test
    void stepsAndNotesOfJobsBySeedAreSpanish() throws Exception {
        Set<String> english = new TreeSet<>();
        Set<String> spanish = new TreeSet<>();
        for (String bundle : List.of("terms", "findings")) {
            english.addAll(words(texts(WORDS.resolve(bundle + ".properties"))));
            spanish.addAll(words(texts(WORDS.resolve(bundle + "_es.properties"))));
        }
        english.removeAll(spanish);
        english.removeAll(UNITS);
        assertThat(english).contains("wall", "bank", "deep", "competent").hasSizeGreaterThan(300);
        Set<String> noted = new TreeSet<>();
        for (Bid bid : GeneratedBids.of(60)) {
            Dossier dossier = SpanishDossiers.of(bid.dossier()).forHomeowner();
            ScopeOfWork scope = ScopePaper.of(dossier, bid.plan());
            notes(scope).forEach(note -> noted.add(note.id()));
            Set<String> left = words(said(scope));
            left.retainAll(english);
            left.removeAll(typed(dossier));
            assertThat(left).as(bid.dossier().job().head().title()).isEmpty();
        }
        assertThat(noted).hasSizeGreaterThan(15);
    }

    /** The sheet and the phone print the same record; both print these sentences and no others. */
    @Test
    void crewSheetsOfJobsBySeedAreSpanish() throws Exception {
        Set<String> english = new TreeSet<>();
        Set<String> spanish = new TreeSet<>();
        for (Path bundle : List.of(WORDS.resolve("terms"), WORDS.resolve("findings"), CREW.resolve("words"))) {
            english.addAll(words(texts(Path.of(bundle + ".properties"))));
            spanish.addAll(words(texts(Path.of(bundle + "_es.properties"))));
        }
        english.removeAll(spanish);
        english.removeAll(UNITS);
        assertThat(english).contains("hold", "ladder", "nobody", "code").hasSizeGreaterThan(400);
        int stopped = 0;
        for (Bid bid : GeneratedBids.of(60)) {
            Dossier dossier = SpanishDossiers.of(bid.dossier()).forHomeowner();
            CrewSheet sheet = CrewSheetPaper.of(
                    dossier,
                    CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff()),
                    dossier.job().issued());
            List<HoldStep> steps = List.of(
                    new HoldStep(1, "A", 12, OptionalInt.of(2)),
                    new HoldStep(2, "A", 15, OptionalInt.empty()),
                    new HoldStep(3, "", 40, OptionalInt.of(5)));
            stopped += sheet.stops().isEmpty() ? 0 : 1;
            Set<String> left = words(said(sheet, CrewHolds.of(steps, "alcance.pdf", sheet.language())));
            left.retainAll(english);
            left.removeAll(typed(dossier));
            left.removeAll(onTheCrewsSheet(dossier));
            assertThat(left).as(bid.dossier().job().head().title()).isEmpty();
        }
        assertThat(stopped).isGreaterThan(5);
    }

    private static String said(CrewSheet sheet, List<CrewHold> holds) {
        List<String> texts = new ArrayList<>(sheet.say().values());
        sheet.calls().forEach(call -> texts.add(call.who() + " " + call.number()));
        sheet.stops().forEach(stop -> texts.add(stop.says() + stop.blanks() + stop.ticks()));
        sheet.trenches()
                .forEach(dug -> texts.add(
                        dug.where() + " " + dug.trench() + " " + dug.bank() + " " + dug.finish() + " " + dug.beside()));
        sheet.edges().forEach(edge -> texts.add(edge.b() + " " + edge.c()));
        sheet.plan().forEach(days -> texts.add(days.days() + " " + days.on() + " " + days.what()));
        sheet.days().forEach(day -> texts.add(day.on() + " " + day.places()));
        sheet.log().forEach(part -> part.rows().forEach(row -> texts.add(row.what() + " " + row.planned())));
        holds.forEach(
                hold -> texts.add(hold.name() + " " + hold.what() + " " + hold.step() + " " + hold.alternative()));
        return String.join("\n", texts).replaceAll("label=|what=|DayPlace|#page=", "");
    }

    /** What somebody wrote that the crew's sheet repeats: where walls are, the office, who accepted what and why. */
    private static Set<String> onTheCrewsSheet(Dossier dossier) {
        List<String> typed = new ArrayList<>();
        dossier.job().walls().forEach(wall -> typed.add(wall.where()));
        dossier.job().acceptedStops().forEach(stop -> typed.add(stop.by() + " " + stop.why()));
        dossier.company().contactPerson().ifPresent(person -> typed.add(person.name()));
        typed.add(dossier.job().site().address().text());
        return words(String.join("\n", typed));
    }

    private static List<FindingNote> notes(ScopeOfWork scope) {
        List<FindingNote> notes = new ArrayList<>(scope.notes());
        scope.steps().walls().forEach(wall -> notes.addAll(wall.notes()));
        return notes;
    }

    private static String said(ScopeOfWork scope) {
        Stream<String> steps = scope.steps().all().stream()
                .flatMap((ScopeStep step) -> Stream.concat(
                        Stream.of(step.text()), step.evidence().stream().map(StepEvidence::label)));
        Stream<String> notes =
                notes(scope).stream().flatMap(note -> Stream.of(note.about(), note.what(), note.action()));
        Stream<String> quantities = Stream.concat(
                        scope.quantities().stream(), scope.walls().stream().flatMap(wall -> wall.quantities().stream()))
                .map(row -> row.description());
        return Stream.of(steps, notes, quantities).flatMap(texts -> texts).collect(Collectors.joining("\n"));
    }

    /** What somebody wrote into the job that steps and notes repeat. */
    private static Set<String> typed(Dossier dossier) {
        List<String> typed = new ArrayList<>(dossier.job().protection());
        dossier.job().site().limits().forEach(limit -> typed.add(limit.note()));
        dossier.takeoff().lines().forEach(line -> typed.add(line.reason()));
        dossier.job().site().house().wayIn().ifPresent(way -> typed.add(way.door()));
        return words(String.join("\n", typed));
    }

    private static String texts(Path file) throws Exception {
        Properties texts = new Properties();
        texts.load(Files.newBufferedReader(file));
        return String.join("\n", texts.values().stream().map(Object::toString).toList())
                .replaceAll("\\{\\w+}", " ");
    }

    /** One letter is a label. */
    private static Set<String> words(String text) {
        return Pattern.compile("\\p{L}{2,}")
                .matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
