// SPDX-License-Identifier: Apache-2.0
package spadework;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.form.kit.WidgetThatKnowsTheOffice;
import spadework.office.OfficeThatKnowsTheWindow;
import spadework.paperwork.proposal.ProposalThatAsksForItems;
import spadework.paperwork.proposal.ProposalThatKnowsCost;
import spadework.press.page.PageThatKnowsCost;

/**
 * Papers of the homeowner cannot tell what work costs: of all papers only the cost sheet, the feedback sheet,
 * the season report and the order to a supplier see a type that carries cost, or call a method that answers with one.
 */
class CostWallTest {
    /** Types that carry cost, or what only the contractor works out from it. */
    private static final Map<String, List<String>> TYPES = Map.of(
            "pricing",
            List.of(
                    "BuildUp",
                    "CostParts",
                    "CrewHour",
                    "Direct",
                    "LineCost",
                    "LinePricing",
                    "MaterialShares",
                    "PricedLine",
                    "PricedSection",
                    "Pricing",
                    "Quote",
                    "Selling",
                    "UnknownPrices"),
            "buying",
            List.of("Delivery", "OrderLine", "PurchaseOrder", "PurchaseOrders"),
            "pricebook",
            List.of("ItemCost", "Labor", "Material"),
            "company",
            List.of("CrewPlace", "PriceRules", "ProfitBasis", "Rates", "Slowdown", "Wage"));

    /** Methods that answer with a bare amount of cost or with internal notes. */
    private static final Map<String, List<String>> METHODS = Map.of(
            "spadework.pricebook.LineItem",
            List.of("cost", "material", "labor", "subcontract", "disposal"),
            "spadework.company.Company",
            List.of("rates", "machines", "wages", "crews", "priceRules"),
            "spadework.contract.PricedChange",
            List.of("figured"),
            "spadework.job.Job",
            List.of("notes"));

    private static final ArchRule WALL = noClasses()
            .that(new DescribedPredicate<JavaClass>("are papers of the homeowner or their print") {
                @Override
                public boolean test(JavaClass one) {
                    String home = one.getPackageName() + ".";
                    return home.startsWith("spadework.press.")
                            || (home.startsWith("spadework.paperwork.")
                                    && !home.startsWith("spadework.paperwork.buying.")
                                    && !home.startsWith("spadework.paperwork.season.")
                                    && !home.startsWith("spadework.paperwork.cost."));
                }
            })
            .should()
            .dependOnClassesThat(new DescribedPredicate<JavaClass>("carry cost") {
                @Override
                public boolean test(JavaClass one) {
                    return types().contains(one.getName())
                            || resideInAnyPackage("spadework.feedback..", "spadework.bids..", "spadework.whatif..")
                                    .test(one);
                }
            })
            .orShould()
            .callMethodWhere(target(new DescribedPredicate<AccessTarget>("answer with cost") {
                @Override
                public boolean test(AccessTarget called) {
                    return METHODS.getOrDefault(called.getOwner().getName(), List.of())
                            .contains(called.getName());
                }
            }));

    private static Set<String> types() {
        return TYPES.entrySet().stream()
                .flatMap(in -> in.getValue().stream().map(name -> "spadework." + in.getKey() + "." + name))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void papersOfTheHomeownerSeeNoCost() {
        WALL.check(ArchitectureTest.SHIPPED);
    }

    /** A name that is gone would hold nothing back. */
    @Test
    void whatTheWallNamesIsThere() {
        assertThat(types()).allMatch(ArchitectureTest.SHIPPED::contain);
        METHODS.forEach(
                (owner, names) -> assertThat(ArchitectureTest.SHIPPED.get(owner).getMethods())
                        .extracting(method -> method.getName())
                        .containsAll(names));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(classes = {ProposalThatKnowsCost.class, ProposalThatAsksForItems.class, PageThatKnowsCost.class})
    void aBreachOfTheWallIsReported(Class<?> breach) {
        assertThat(reported(WALL, breach)).isTrue();
    }

    @Test
    void anOfficeThatKnowsTheWindowIsReported() {
        assertThat(reported(ArchitectureTest.onlyWhatItsRowNames("office"), OfficeThatKnowsTheWindow.class))
                .isTrue();
    }

    @Test
    void aWidgetThatKnowsTheOfficeIsReported() {
        assertThat(reported(ArchitectureTest.onlyWhatItsRowNames("form.kit"), WidgetThatKnowsTheOffice.class))
                .isTrue();
    }

    private static boolean reported(ArchRule rule, Class<?> breach) {
        return rule.evaluate(new ClassFileImporter().importClasses(breach)).getFailureReport().getDetails().stream()
                .anyMatch(line -> line.contains(breach.getName()));
    }
}
