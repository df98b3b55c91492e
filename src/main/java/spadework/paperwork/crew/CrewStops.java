// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.AcceptedStop;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.FindingNotes;
import spadework.safety.way.NearLine;
import spadework.wording.Language;
import spadework.wording.Wording;

/** What holds the work up on site until it is written or seen there, whoever accepted it in the office. */
final class CrewStops {
    private static final Wording WORDS = Wording.beside(CrewStops.class);
    /** Findings before which an engineer writes. */
    private static final Pattern LETTER = Pattern.compile("engineer-.*|footing-in-reach|pit-below-footing");
    /** Findings before which an engineer looks at a hole. */
    private static final Set<String> PIT = Set.of("pit-beside-footing", "pit-level-unknown");

    /** Findings of what would send a wall to an engineer, had somebody looked. */
    private static final Set<String> UNSEEN =
            Set.of("bow-unmeasured", "tie-unseen", "unseen-horizontal-crack", "unseen-displaced");

    private static final Set<String> ASKED = Set.of("tree-at-cut", "neighbor-footing-unmeasured");

    private static final Pattern ENGINEER = Pattern.compile("(?iu)\\bengineer\\b|\\bP\\.?E\\b|\\bingenier[oa]\\b");

    private final Dossier dossier;
    private final Language language;

    CrewStops(Dossier dossier, Language language) {
        this.dossier = dossier;
        this.language = language;
    }

    List<CrewStop> all() {
        List<CrewStop> stops = new ArrayList<>();
        if (isLetterFirst()) {
            stops.add(letter());
        }
        if (isTicketFirst()) {
            stops.add(ticket());
        }
        found().filter(finding -> PIT.contains(finding.id())).map(this::pit).forEach(stops::add);
        FindingNotes.forCrew(dossier).stream()
                .filter(note -> note.severity().equals("stop"))
                .filter(note -> !LETTER.matcher(note.id()).matches())
                .map(this::other)
                .forEach(stops::add);
        unseen().ifPresent(stops::add);
        found().filter(finding -> ASKED.contains(finding.id())).map(this::asked).forEach(stops::add);
        CrewWayIn.of(dossier, language).ifPresent(stops::add);
        return stops;
    }

    /** Whether nobody digs before an engineer has written. */
    boolean isLetterFirst() {
        return letters().findAny().isPresent();
    }

    /** Whether nobody digs before utilities are marked: no ticket was written down. */
    boolean isTicketFirst() {
        return found().anyMatch(finding -> finding.id().equals("locate-missing"));
    }

    /** What has to be there before anybody digs, as the plan of the days calls it. */
    List<String> first() {
        List<String> first = new ArrayList<>();
        if (isLetterFirst()) {
            first.add("letter");
        }
        if (isTicketFirst()) {
            first.add("ticket");
        }
        return first;
    }

    private CrewStop ticket() {
        Wording said = WORDS.in(language);
        return new CrewStop(
                said.get("stop.ticket", NearLine.ZONE.text()),
                List.of(said.get("ticket.number"), said.get("ticket.answered")),
                List.of(said.get("ticket.marks")));
    }

    private Stream<Finding> found() {
        return dossier.findings().site().stream();
    }

    private Stream<Finding> letters() {
        return found().filter(finding -> finding.severity() == Severity.STOP
                && LETTER.matcher(finding.id()).matches());
    }

    /** What somebody accepted who is no engineer is no letter, and is not printed. */
    private CrewStop letter() {
        String places = letters().map(Finding::about).distinct().collect(Collectors.joining(", "));
        List<String> says = new ArrayList<>();
        says.add(WORDS.in(language).get("stop.letter", places));
        letters()
                .map(finding -> WORDS.in(language).get("why." + finding.id(), finding.about()))
                .forEach(says::add);
        letters()
                .flatMap(finding -> written(finding).stream())
                .map(by -> WORDS.in(language).get("stop.written", by.by(), language.day(by.on()), by.why()))
                .distinct()
                .forEach(says::add);
        says.add(WORDS.in(language).get("stop.rules"));
        return new CrewStop(
                String.join(" ", says),
                Stream.of("day", "by", "asks")
                        .map(blank -> WORDS.in(language).get("letter." + blank))
                        .toList(),
                Stream.of("here", "read")
                        .map(tick -> WORDS.in(language).get("letter." + tick))
                        .toList());
    }

    /** What an engineer put a name to. */
    private Optional<AcceptedStop> written(Finding finding) {
        return dossier.job().acceptedStops().stream()
                .filter(stop ->
                        stop.finding().equals(finding.id()) && stop.about().equals(finding.about()))
                .filter(stop -> ENGINEER.matcher(stop.by()).find())
                .findFirst();
    }

    /** What nobody measured or saw yet at the walls: each answer has its place, and nobody digs there before it. */
    private Optional<CrewStop> unseen() {
        List<String> blanks = found().filter(finding -> UNSEEN.contains(finding.id()))
                .map(finding -> dossier.terms().get("scope.look-first." + finding.id()))
                .toList();
        List<String> walls = found().filter(finding -> UNSEEN.contains(finding.id()))
                .map(Finding::about)
                .toList();
        List<String> each = IntStream.range(0, walls.size())
                .mapToObj(i -> walls.get(i) + ", " + blanks.get(i) + ":")
                .toList();
        return each.isEmpty()
                ? Optional.empty()
                : Optional.of(new CrewStop(dossier.terms().get("scope.look-first"), each, List.of()));
    }

    /** What stands beside a wall's trench and nobody asked after yet. */
    private CrewStop asked(Finding finding) {
        String key = "scope.ask-first." + finding.id();
        return new CrewStop(
                WORDS.in(language)
                        .get("stop.ask", finding.about(), dossier.terms().get(key)),
                List.of(dossier.terms().get(key + ".blank") + ":"),
                List.of());
    }

    private CrewStop pit(Finding finding) {
        String says = finding.id().equals("pit-level-unknown")
                ? WORDS.in(language)
                        .get(
                                "stop.pit-unknown",
                                finding.about(),
                                finding.values().get("depth"))
                : WORDS.in(language)
                        .get(
                                "stop.pit",
                                finding.about(),
                                finding.values().get("depth"),
                                finding.values().get("below"),
                                finding.values().get("away"));
        return new CrewStop(
                says,
                Stream.of("engineer", "day")
                        .map(blank -> WORDS.in(language).get("pit." + blank))
                        .toList(),
                List.of(WORDS.in(language).get("pit.seen")));
    }

    private CrewStop other(FindingNote note) {
        String says = Stream.of(note.what(), note.action(), note.accepted())
                .filter(text -> !text.isEmpty())
                .map(CrewStops::sentence)
                .collect(Collectors.joining(" "));
        return new CrewStop(WORDS.in(language).get("stop.other", says), List.of(), List.of());
    }

    private static String sentence(String text) {
        String begun = Character.toUpperCase(text.charAt(0)) + text.substring(1);
        return begun.matches("(?s).*[.!?:]") ? begun : begun + ".";
    }
}
