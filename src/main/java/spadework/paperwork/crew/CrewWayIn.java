// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import spadework.finding.Finding;
import spadework.job.WayIn;
import spadework.job.WayInKind;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.wording.Language;
import spadework.wording.Wording;

/** How people get into the house and out of it, as the crew has to see to it before the dig (T-21). */
final class CrewWayIn {
    private static final Wording WORDS = Wording.beside(CrewWayIn.class);
    private static final Set<String> OPEN = Set.of("way-in-shut", "way-in-front-door", "way-in-not-free");

    private CrewWayIn() {}

    /** Empty where nothing is dug, or where the front door is known and no wall is dug before it. */
    static Optional<CrewStop> of(Dossier dossier, Language language) {
        Wording said = WORDS.in(language);
        Set<String> ids = dossier.findings().site().stream().map(Finding::id).collect(Collectors.toSet());
        List<String> door = List.of(said.get("way-in.door"));
        if (ids.stream().anyMatch(OPEN::contains)) {
            return Optional.of(new CrewStop(dossier.terms().get("scope.way-in.open"), door, List.of()));
        }
        if (ids.contains("way-in-unwritten")) {
            return Optional.of(new CrewStop(dossier.terms().get("scope.way-in"), door, List.of()));
        }
        return dossier.job().site().house().wayIn().map(way -> known(dossier, way, said));
    }

    private static CrewStop known(Dossier dossier, WayIn way, Wording said) {
        String says =
                dossier.terms().get("scope.way-in." + PaperWords.key(way.by().name()), "door", way.door());
        String tick = way.by() == WayInKind.BRIDGE ? said.get("way-in.bridge") : said.get("way-in.clear");
        return new CrewStop(says, List.of(said.get("way-in.seen")), List.of(tick));
    }
}
