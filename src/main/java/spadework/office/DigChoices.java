// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spadework.listing.Listing;
import spadework.money.Dollars;
import spadework.office.reply.TextColumns;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.whatif.Case;
import spadework.whatif.TrenchChoice;
import spadework.whatif.TrenchChoices;
import spadework.whatif.Unlawful;

/** Slope, bench, shield and hand digging side by side, in words; for the contractor only. */
final class DigChoices {
    private DigChoices() {}

    /** Rows of cells, the first of them heads, the last the offer; none where no wall is dug, or all is agreed. */
    static List<List<String>> rows(Dossier dossier) {
        List<List<String>> rows = new ArrayList<>();
        if (dossier.job().agreement().accepted().isPresent()) {
            return rows;
        }
        TrenchChoices choices = of(dossier);
        if (!choices.all().isEmpty()) {
            rows.add(List.of(dossier.terms().get("choice.heads").split(";")));
            choices.all().forEach(choice -> rows.add(row(choice, choices, dossier.terms())));
        }
        return rows;
    }

    /** The rows as lines for the screen. */
    static List<String> lines(Dossier dossier) {
        List<List<String>> rows = rows(dossier);
        List<String> lines = new ArrayList<>();
        if (!rows.isEmpty()) {
            lines.add(dossier.terms().get("choice.title"));
            lines.addAll(TextColumns.of(rows));
        }
        return lines;
    }

    /** The same for other programs. */
    static List<Listing.DigWay> listed(Dossier dossier) {
        if (dossier.job().agreement().accepted().isPresent()) {
            return List.of();
        }
        TrenchChoices choices = of(dossier);
        return choices.all().stream()
                .map(choice -> new Listing.DigWay(
                        choice.way().word(),
                        choice.isOffered(),
                        verdict(choice, choices, dossier.terms()),
                        choice.priced().map(DigChoices::figures).orElse(Map.of())))
                .toList();
    }

    private static Map<String, String> figures(TrenchChoice.Priced priced) {
        Map<String, String> figures = new LinkedHashMap<>();
        figures.put("soil", priced.soil().toPlainString() + " cy");
        figures.put("restoration", priced.restoration().plain());
        figures.put("workingDays", Integer.toString(priced.days()));
        figures.put("finish", priced.finish().toString());
        figures.put("rental", priced.rental().plain());
        figures.put("price", priced.price().plain());
        return figures;
    }

    private static TrenchChoices of(Dossier dossier) {
        return TrenchChoices.of(new Case(dossier.job(), dossier.company(), dossier.book()));
    }

    private static List<String> row(TrenchChoice choice, TrenchChoices all, PaperWords terms) {
        String way = terms.of("choice.way", choice.way());
        String verdict = verdict(choice, all, terms);
        return choice.priced()
                .map(priced -> List.of(
                        way,
                        priced.soil().toPlainString() + " cy",
                        priced.restoration().text(),
                        Integer.toString(priced.days()),
                        priced.rental().text(),
                        priced.price().text(),
                        verdict))
                .orElse(List.of(way, "–", "–", "–", "–", "–", verdict));
    }

    private static String verdict(TrenchChoice choice, TrenchChoices all, PaperWords terms) {
        if (!choice.isOffered()) {
            String here = choice.inJob() ? terms.get("choice.job") + " " : "";
            return here
                    + choice.against().stream()
                            .collect(Collectors.groupingBy(Unlawful::reason, LinkedHashMap::new, Collectors.toList()))
                            .values()
                            .stream()
                            .map(same -> reason(same, terms))
                            .collect(Collectors.joining(" "));
        }
        TrenchChoice cheapest = all.cheapest().orElseThrow();
        String key = cheapest.equals(choice) ? "choice.cheapest" : "choice.dearer";
        return terms.get(
                choice.inJob() ? key + ".job" : key,
                "more",
                price(choice).minus(price(cheapest)).text(),
                "way",
                terms.of("choice.way", cheapest.way()));
    }

    private static Dollars price(TrenchChoice choice) {
        return choice.priced().orElseThrow().price();
    }

    private static String reason(List<Unlawful> same, PaperWords terms) {
        Unlawful first = same.get(0);
        String walls = same.stream().map(Unlawful::wall).collect(Collectors.joining(", "));
        String figure = first.figure().isEmpty() ? "?" : first.figure();
        return terms.of("choice.reason", first.reason(), "walls", walls, "figure", figure);
    }
}
