package spadework.intake;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spadework.company.Company;
import spadework.company.CrewPlace;
import spadework.company.Insurance;
import spadework.company.Licence;
import spadework.company.Paper;
import spadework.company.PriceRules;
import spadework.company.ProfitBasis;
import spadework.company.Slowdown;
import spadework.company.Tax;
import spadework.company.TaxMode;
import spadework.company.Wage;
import spadework.company.WorkCondition;
import spadework.measure.Percent;
import spadework.money.Dollars;

/** Reads company.json. */
final class CompanyReader {
    private static final Kind<Company> COMPANY = Kind.object(CompanyReader::company);

    private static final Kind<Wage> WAGE = Kind.object(
            fields -> new Wage(fields.get("hourly", Amounts.ABOVE_ZERO), fields.get("burden", Shares.fromZeroTo(200))));

    private static final Limits<BigDecimal> FACTOR =
            Limits.between(BigDecimal.ONE, BigDecimal.TEN, BigDecimal::toPlainString);

    private CompanyReader() {}

    static Company read(Node root) {
        return COMPANY.read(root);
    }

    private static Company company(Fields fields) {
        fields.find("$schema", Texts.TEXT);
        Map<String, Wage> wages = fields.named("wages", WAGE);
        boolean complete = fields.node().sheet().isWhole("/wages");
        Names trades = new Names("a name of \"wages\"", wages.keySet(), complete);
        return new Company(
                fields.get("name", Texts.LABEL),
                fields.get("licence", Kind.object(CompanyReader::licence)),
                fields.get("insurance", Kind.object(CompanyReader::insurance)),
                fields.get("address", Addresses.ADDRESS),
                fields.get("phone", Texts.LABEL),
                fields.get("email", Texts.LABEL),
                fields.find("logo", Texts.FILE),
                fields.get("paper", Choices.of(Paper.class), Paper.LETTER),
                wages,
                fields.named("crews", crew(trades)),
                fields.named("machines", Amounts.FROM_ZERO),
                fields.get("slowdowns", new Kind<>("[]", CompanyReader::slowdowns), List.of()),
                fields.get("priceRules", Kind.object(CompanyReader::priceRules)),
                fields.get("tax", Kind.object(CompanyReader::tax)),
                fields.get("validDays", Terms.VALID_DAYS),
                fields.get("payments", Terms.PAYMENTS),
                fields.get("warranty", Terms.WARRANTY),
                fields.list("excluded", Texts.TEXT),
                fields.list("preparation", Texts.TEXT),
                fields.list("terms", Texts.TEXT),
                fields.find("taxId", Texts.LABEL),
                fields.find("bond", Texts.LABEL),
                fields.find("affiliates", new Kind<>("[]", CompanyReader::affiliates)));
    }

    private static Kind<List<CrewPlace>> crew(Names trades) {
        Kind<CrewPlace> place = Kind.object(
                fields -> new CrewPlace(fields.get("wage", trades.kind()), fields.get("count", Counts.between(1, 50))));
        return new Kind<>("[{\"wage\": \"…\", \"count\": 1}]", node -> {
            List<CrewPlace> places = node.elements().stream().map(place::read).toList();
            if (places.isEmpty() && !node.isSilent()) {
                node.fault("a crew of nobody", "at least one member", "add {\"wage\": \"…\", \"count\": 1}");
            }
            return places;
        });
    }

    private static List<String> affiliates(Node node) {
        return node.elements().stream().map(Texts.LABEL::read).toList();
    }

    private static Licence licence(Fields fields) {
        return new Licence(
                fields.get("label", Texts.LABEL),
                fields.get("number", Texts.LABEL),
                fields.find("classification", Texts.LABEL),
                fields.find("until", Dates.DATE));
    }

    private static Insurance insurance(Fields fields) {
        return new Insurance(
                fields.get("carrier", Texts.LABEL),
                fields.get("policy", Texts.LABEL),
                fields.get("limits", Texts.LABEL),
                fields.get("until", Dates.DATE),
                fields.find("phone", Texts.LABEL),
                fields.find("workers", Texts.LABEL));
    }

    private static List<Slowdown> slowdowns(Node node) {
        Kind<Slowdown> kind = Kind.object(CompanyReader::slowdown);
        List<Slowdown> slowdowns = node.elements().stream().map(kind::read).toList();
        Set<WorkCondition> seen = new HashSet<>();
        for (int i = 0; i < slowdowns.size(); i++) {
            WorkCondition condition = slowdowns.get(i).condition();
            String pointer = node.pointer() + "/" + i + "/condition";
            if (node.sheet().isSound(pointer) && !seen.add(condition)) {
                String found = "\"" + Choices.word(condition) + "\" a second time";
                node.sheet().fault(pointer, found, "each condition once", "keep one of the two");
            }
        }
        return slowdowns;
    }

    private static Slowdown slowdown(Fields fields) {
        return new Slowdown(
                fields.get("condition", Choices.of(WorkCondition.class)),
                fields.get("factor", Counts.ratio(FACTOR)),
                fields.get("source", Texts.TEXT));
    }

    private static PriceRules priceRules(Fields fields) {
        return new PriceRules(
                fields.get("contingency", Shares.fromZeroToUnder(100)),
                fields.get("overhead", Shares.fromZeroToUnder(100)),
                fields.get("basis", Choices.of(ProfitBasis.class)),
                fields.get("profit", Shares.fromZeroToUnder(100)),
                fields.get("minimum", Amounts.FROM_ZERO, Dollars.ZERO),
                fields.get("step", Amounts.ABOVE_ZERO, Dollars.of("1")));
    }

    private static Tax tax(Fields fields) {
        boolean classes = fields.node().at("classes").json() != null;
        return setting(
                fields, classes ? fields.named("classes", Kind.object(CompanyReader::ofClass)) : noClasses(fields));
    }

    private static Map<String, Tax> noClasses(Fields fields) {
        fields.find("classes", Texts.TEXT);
        return Map.of();
    }

    private static Tax ofClass(Fields fields) {
        return setting(fields, Map.of());
    }

    private static Tax setting(Fields fields, Map<String, Tax> classes) {
        TaxMode mode = fields.get("mode", Choices.of(TaxMode.class));
        Kind<Percent> rate = Shares.fromZeroTo(25);
        Percent percent = mode == TaxMode.NONE ? fields.get("rate", rate, Percent.ZERO) : fields.get("rate", rate);
        return new Tax(mode, percent, classes);
    }
}
