// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.job.Digging;
import spadework.job.Job;
import spadework.job.Protection;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.paperwork.PaperWords;
import spadework.trench.Bank;
import spadework.trench.SlopeTable;
import spadework.wording.Language;
import spadework.wording.Wording;

/**
 * Where the edge of each bank comes to lie if the competent person finds another soil than was taken (29 CFR 1926
 * Subpart P App. B, T-09, T-11). Soil beside a house was dug before, so no column is for Type A (T-02).
 */
final class CrewEdges {
    private static final Wording WORDS = Wording.beside(CrewEdges.class);

    private final Job job;
    private final Language language;

    CrewEdges(Job job, Language language) {
        this.job = job;
        this.language = language;
    }

    /** Walls that are alike in a row together; a wall that is shielded anyhow is so in any soil. */
    List<BankEdge> all() {
        Map<List<String>, List<String>> alike = new LinkedHashMap<>();
        for (Wall wall : job.walls()) {
            boolean shielded = Bank.of(job.site(), wall).protection() == Protection.SHIELDED;
            String shield = WORDS.in(language).get("edge.shield");
            List<String> texts =
                    shielded ? List.of(shield, shield) : List.of(edge(wall, SoilType.B), edge(wall, SoilType.C));
            alike.computeIfAbsent(texts, same -> new ArrayList<>()).add(wall.label());
        }
        return alike.entrySet().stream()
                .map(row -> new BankEdge(
                        String.join(", ", row.getValue()),
                        row.getKey().get(0),
                        row.getKey().get(1)))
                .toList();
    }

    private String edge(Wall wall, SoilType type) {
        Soil ground = job.site().soil();
        Site found = job.site().withSoil(new Soil(ground.texture(), ground.seepage(), type));
        Length reach = Bank.reach(wall, SlopeTable.run(type));
        Optional<SiteLimit> inTheWay = Bank.of(found, sloped(wall)).inTheWay();
        if (inTheWay.isPresent()) {
            String what = WORDS.in(language)
                    .get(
                            "beside." + PaperWords.key(inTheWay.get().kind().name()),
                            inTheWay.get().distance().text());
            return WORDS.in(language).get("edge.no-room", reach.text(), what);
        }
        return WORDS.in(language).get("edge.at", reach.text());
    }

    private static Wall sloped(Wall wall) {
        Digging asked = wall.digging();
        return wall.withDigging(
                new Digging(asked.access(), asked.handShare(), asked.bottomWidth(), Protection.SLOPED, asked.ends()));
    }
}
