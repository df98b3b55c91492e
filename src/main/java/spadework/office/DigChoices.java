// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.listing.Listing;
import spadework.money.Dollars;
import spadework.office.reply.TextColumns;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.whatif.Case;
import spadework.whatif.PlannedWays;
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
            choices.planned().ifPresent(planned -> rows.add(row(planned, choices, dossier.terms())));
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
        Stream<Listing.DigWay> planned = choices.planned().stream()
                .map(ways -> new Listing.DigWay(
                        "planned", true, verdict(ways, choices, dossier.terms()), figures(ways.priced())));
        return Stream.concat(
                        planned,
                        choices.all().stream()
                                .map(choice -> new Listing.DigWay(
                                        choice.way().word(),
                                        choice.isOffered(),
                                        verdict(choice, choices, dossier.terms()),
                                        choice.priced().map(DigChoices::figures).orElse(Map.of()))))
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
                .map(priced -> row(way, priced, verdict))
                .orElse(List.of(way, "–", "–", "–", "–", "–", verdict));
    }

    private static List<String> row(PlannedWays planned, TrenchChoices all, PaperWords terms) {
        String ways = planned.walls().entrySet().stream()
                .map(entry -> terms.get(
                        "choice.way.at",
                        "way",
                        terms.of("choice.way", entry.getKey()),
                        "walls",
                        String.join(", ", entry.getValue())))
                .collect(Collectors.joining("; "));
        return row(terms.get("choice.way.planned", "ways", ways), planned.priced(), verdict(planned, all, terms));
    }

    private static List<String> row(String way, TrenchChoice.Priced priced, String verdict) {
        return List.of(
                way,
                priced.soil().toPlainString() + " cy",
                priced.restoration().text(),
                Integer.toString(priced.days()),
                priced.rental().text(),
                priced.price().text(),
                verdict);
    }

    /** How the job as it stands compares with the cheapest single way. */
    private static String verdict(PlannedWays planned, TrenchChoices all, PaperWords terms) {
        Dollars price = planned.priced().price();
        Optional<TrenchChoice> cheapest = all.cheapest();
        if (cheapest.isEmpty()) {
            return terms.get("choice.planned");
        }
        String way = terms.of("choice.way", cheapest.get().way());
        return isCheapest(planned, all)
                ? terms.get(
                        "choice.planned.less",
                        "less",
                        price(cheapest.get()).minus(price).text(),
                        "way",
                        way)
                : terms.get(
                        "choice.dearer.job",
                        "more",
                        price.minus(price(cheapest.get())).text(),
                        "way",
                        way);
    }

    private static boolean isCheapest(PlannedWays planned, TrenchChoices all) {
        return all.cheapest()
                .map(way ->
                        planned.priced().price().amount().compareTo(price(way).amount()) <= 0)
                .orElse(true);
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
        Optional<PlannedWays> planned = all.planned().filter(ways -> isCheapest(ways, all));
        if (planned.isPresent()) {
            Dollars more = price(choice).minus(planned.get().priced().price());
            return terms.get("choice.dearer.planned", "more", more.text());
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
