// SPDX-License-Identifier: Apache-2.0
package spadework.intake.company;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.company.Backfill;
import spadework.company.Company;
import spadework.company.Contact;
import spadework.company.ContactPerson;
import spadework.company.Credentials;
import spadework.company.CrewPlace;
import spadework.company.Digger;
import spadework.company.Letterhead;
import spadework.company.License;
import spadework.company.Paper;
import spadework.company.Production;
import spadework.company.Rates;
import spadework.company.Slowdown;
import spadework.company.Tax;
import spadework.company.TaxMode;
import spadework.company.UsualTerms;
import spadework.company.Wage;
import spadework.company.WorkCondition;
import spadework.intake.source.Excerpt;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Addresses;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Counts;
import spadework.intake.value.DollarAmounts;
import spadework.intake.value.Languages;
import spadework.intake.value.Limits;
import spadework.intake.value.Names;
import spadework.intake.value.Shares;
import spadework.measure.Percent;
import spadework.wording.Language;

/** Reads company.json. */
public final class CompanyReader {
    private static final ValueKind<Company> COMPANY = ValueKind.object(CompanyReader::company);

    private static final ValueKind<Wage> WAGE = ValueKind.object(fields ->
            new Wage(fields.get("hourly", DollarAmounts.ABOVE_ZERO), fields.get("burden", Shares.fromZeroTo(200))));

    private static final Limits<BigDecimal> FACTOR =
            Limits.between(BigDecimal.ONE, BigDecimal.TEN, BigDecimal::toPlainString);

    private CompanyReader() {}

    public static Company read(SourceNode root) {
        return COMPANY.read(root);
    }

    private static Company company(ObjectFields fields) {
        fields.find("$schema", Texts.TEXT);
        Map<String, Wage> wages = fields.named("wages", WAGE);
        boolean complete = fields.node().sheet().isWhole("/wages");
        Names trades = new Names("a name of \"wages\"", wages.keySet(), complete);
        return new Company(
                fields.get("name", Texts.LABEL),
                new Credentials(
                        fields.get("license", ValueKind.object(CompanyReader::license)),
                        fields.get("insurance", InsuranceReader.INSURANCE),
                        fields.find("taxId", Texts.LABEL),
                        fields.find("bond", Texts.LABEL),
                        fields.find("affiliates", new ValueKind<>("[]", CompanyReader::affiliates))),
                new Contact(
                        fields.get("address", Addresses.ADDRESS),
                        fields.get("phone", Texts.LABEL),
                        fields.get("email", Texts.LABEL),
                        fields.find("contact", ValueKind.object(CompanyReader::contact))),
                new Letterhead(
                        fields.find("logo", Texts.FILE),
                        fields.get("paper", Choices.of(Paper.class), Paper.LETTER),
                        fields.list("payTo", Texts.LABEL),
                        fields.get("crewLanguage", Languages.CODE, Language.ENGLISH),
                        fields.get("officeLanguage", Languages.CODE, Language.ENGLISH),
                        fields.get("readingCopies", Texts.YES_OR_NO, false),
                        fields.get("translations", TranslationReader.TRANSLATIONS, Map.of())),
                new Rates(
                        wages,
                        fields.named("crews", crew(trades)),
                        fields.named("machines", DollarAmounts.FROM_ZERO),
                        fields.get("slowdowns", new ValueKind<>("[]", CompanyReader::slowdowns), List.of())),
                new Production(
                        fields.find("calendar", WorkCalendarReader.CALENDAR),
                        diggers(fields),
                        fields.find("backfill", ValueKind.object(CompanyReader::backfill))),
                fields.get("priceRules", ValueKind.object(PriceRulesReader::priceRules)),
                fields.get("tax", ValueKind.object(CompanyReader::tax)),
                new UsualTerms(
                        fields.get("validDays", TermsReader.VALID_DAYS),
                        fields.get("payments", TermsReader.PAYMENTS),
                        fields.get("warranty", TermsReader.WARRANTY),
                        fields.list("excluded", Texts.TEXT),
                        fields.list("preparation", Texts.TEXT),
                        fields.list("terms", Texts.TEXT)));
    }

    private static ValueKind<List<CrewPlace>> crew(Names trades) {
        ValueKind<CrewPlace> place = ValueKind.object(
                fields -> new CrewPlace(fields.get("wage", trades.kind()), fields.get("count", Counts.between(1, 50))));
        return new ValueKind<>("[{\"wage\": \"…\", \"count\": 1}]", node -> {
            List<CrewPlace> places = node.elements().stream().map(place::read).toList();
            if (places.isEmpty() && !node.isSilent()) {
                node.fault("a crew of nobody", "at least one member", "add {\"wage\": \"…\", \"count\": 1}");
            }
            return places;
        });
    }

    /** What machines do, each a machine of the company. */
    private static Map<String, Digger> diggers(ObjectFields fields) {
        SourceNode node = fields.node().at("diggers");
        if (node.json() == null) {
            fields.find("diggers", Texts.TEXT);
            return Map.of();
        }
        Map<String, Digger> diggers = fields.named("diggers", WorkCalendarReader.DIGGER);
        Names machines = new Names(
                "a name of \"machines\"",
                Set.copyOf(fields.node().at("machines").keys()),
                node.sheet().isWhole("/machines"));
        diggers.keySet()
                .forEach(name -> machines.check(node.sheet(), node.at(name).pointer(), name, Excerpt.quoted(name)));
        return diggers;
    }

    private static List<String> affiliates(SourceNode node) {
        return node.elements().stream().map(Texts.LABEL::read).toList();
    }

    private static License license(ObjectFields fields) {
        return new License(
                fields.get("label", Texts.LABEL),
                fields.get("number", Texts.LABEL),
                fields.find("classification", Texts.LABEL),
                fields.find("until", CalendarDates.DATE),
                fields.find("state", Addresses.STATE),
                fields.list("elsewhere", ValueKind.object(CompanyReader::licenseElsewhere)));
    }

    private static License licenseElsewhere(ObjectFields fields) {
        return new License(
                fields.get("label", Texts.LABEL),
                fields.get("number", Texts.LABEL),
                fields.find("classification", Texts.LABEL),
                fields.find("until", CalendarDates.DATE),
                Optional.of(fields.get("state", Addresses.STATE)),
                List.of());
    }

    private static ContactPerson contact(ObjectFields fields) {
        return new ContactPerson(fields.get("name", Texts.LABEL), fields.find("phone", Texts.LABEL));
    }

    private static List<Slowdown> slowdowns(SourceNode node) {
        ValueKind<Slowdown> kind = ValueKind.object(CompanyReader::slowdown);
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

    private static Slowdown slowdown(ObjectFields fields) {
        return new Slowdown(
                fields.get("condition", Choices.of(WorkCondition.class)),
                fields.get("factor", Counts.ratio(FACTOR)),
                fields.get("source", Texts.TEXT));
    }

    private static Backfill backfill(ObjectFields fields) {
        return new Backfill(fields.get("shrink", Shares.fromZeroToUnder(50)), fields.get("source", Texts.TEXT));
    }

    private static Tax tax(ObjectFields fields) {
        boolean classes = fields.node().at("classes").json() != null;
        return setting(
                fields,
                classes ? fields.named("classes", ValueKind.object(CompanyReader::ofClass)) : noClasses(fields));
    }

    private static Map<String, Tax> noClasses(ObjectFields fields) {
        fields.find("classes", Texts.TEXT);
        return Map.of();
    }

    private static Tax ofClass(ObjectFields fields) {
        return setting(fields, Map.of());
    }

    private static Tax setting(ObjectFields fields, Map<String, Tax> classes) {
        TaxMode mode = fields.get("mode", Choices.of(TaxMode.class));
        ValueKind<Percent> rate = Shares.fromZeroTo(25);
        Percent percent = mode == TaxMode.NONE ? fields.get("rate", rate, Percent.ZERO) : fields.get("rate", rate);
        return new Tax(mode, percent, classes);
    }
}
