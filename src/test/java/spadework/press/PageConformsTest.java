// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;

/** Every document is PDF/UA-1 and PDF/A-3a, by an independent validator. */
class PageConformsTest {
    private static final PagePress PRESS = new PagePress(Templates.bundled());

    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void everyDocumentBreaksNoRule(String name, String document, Map<String, Object> model) {
        assertThat(VeraPdf.failedRules(PRESS.print(document, model, PageFixtures.INFO)))
                .isEmpty();
    }

    @Test
    void theValidatorFindsADrawingWithoutWords() {
        Map<String, Object> model = PageFixtures.proposalModel();
        model.put("plan", PageFixtures.PLAN.replaceAll("alt=\"[^\"]*\"", ""));

        assertThat(VeraPdf.failedRules(PRESS.print("proposal", model, PageFixtures.INFO)))
                .anyMatch(rule -> rule.contains("7.3-1"));
    }

    static Stream<Arguments> documents() {
        return Stream.of(
                Arguments.of("proposal", "proposal", PageFixtures.proposalModel()),
                Arguments.of("scope", "scope", PageFixtures.scopeModel()),
                Arguments.of("specimen", "certificate", PageFixtures.certificateModel(true)),
                Arguments.of("certificate", "certificate", PageFixtures.certificateModel(false)),
                Arguments.of("cost sheet", "cost-sheet", PageFixtures.sheetModel()),
                Arguments.of("proposal on A4 with a logo", "proposal", PageFixtures.proposalOnA4WithLogo()));
    }
}
