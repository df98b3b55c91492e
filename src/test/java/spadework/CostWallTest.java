// SPDX-License-Identifier: Apache-2.0
package spadework;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.form.kit.WidgetThatKnowsTheOffice;
import spadework.office.OfficeThatKnowsTheWindow;
import spadework.paperwork.WithheldFromHomeowner;
import spadework.paperwork.proposal.ProposalThatAsksForItems;
import spadework.paperwork.proposal.ProposalThatKnowsCost;
import spadework.press.page.PageThatKnowsCost;

/**
 * Papers of the homeowner cannot tell what work costs: of all papers only the cost sheet, the feedback sheet,
 * the season report and the order to a supplier see a type that carries cost, or call a method that answers with one.
 */
class CostWallTest {
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
                    return WithheldFromHomeowner.types().contains(one.getName())
                            || WithheldFromHomeowner.packages().contains(one.getPackageName());
                }
            })
            .orShould()
            .callMethodWhere(target(new DescribedPredicate<AccessTarget>("answer with cost") {
                @Override
                public boolean test(AccessTarget called) {
                    return WithheldFromHomeowner.methods()
                            .contains(called.getOwner().getName() + "#" + called.getName());
                }
            }));

    @Test
    void papersOfTheHomeownerSeeNoCost() {
        WALL.check(ArchitectureTest.SHIPPED);
    }

    /** A name that is gone would hold nothing back. */
    @Test
    void whatTheWallNamesIsThere() {
        assertThat(WithheldFromHomeowner.types()).isNotEmpty().allMatch(ArchitectureTest.SHIPPED::contain);
        assertThat(WithheldFromHomeowner.packages())
                .isNotEmpty()
                .isSubsetOf(ArchitectureTest.SHIPPED.stream()
                        .map(JavaClass::getPackageName)
                        .toList());
        assertThat(WithheldFromHomeowner.methods()).isNotEmpty().allSatisfy(method -> {
            String[] parts = method.split("#");
            assertThat(ArchitectureTest.SHIPPED.get(parts[0]).getMethods())
                    .extracting(JavaMethod::getName)
                    .contains(parts[1]);
        });
    }

    @Test
    void eachSaysWhyItIsWithheld() {
        assertThat(WithheldFromHomeowner.values())
                .allSatisfy(one -> assertThat(one.why()).isNotBlank());
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
