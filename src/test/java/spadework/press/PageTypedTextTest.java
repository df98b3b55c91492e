// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;

/** What a customer typed is never read as template, markup or style: it prints as the characters it is. */
class PageTypedTextTest {
    private static final PagePress PRESS = new PagePress(Templates.bundled());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "${7*7}",
                "<#if true>x</#if>",
                "<@page.names of=[]/>",
                "#{3}",
                "[=5]",
                "<script>alert(1)</script>",
                "</td><td>",
                "&amp; & &lt;",
                "<!-- gone? -->",
                "<![CDATA[x]]>",
                "a\"b'c",
                "content: element(header)",
                "=HYPERLINK(\"x\")"
            })
    void typedTextPrintsAsItIs(String typed) {
        Map<String, Object> model = PageFixtures.model(
                "proposal", PageFixtures.proposal(PageFixtures.head(false, Optional.empty(), typed, "Marta Quill")));

        assertThat(PageText.pages(PRESS.print("proposal", model, PageFixtures.INFO))
                        .get(0))
                .contains("For " + typed + " and Marta Quill, 41 Tannery Row");
    }
}
