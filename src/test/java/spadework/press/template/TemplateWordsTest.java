// SPDX-License-Identifier: Apache-2.0
package spadework.press.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.wording.Language;

/** The sentences beside a template. */
class TemplateWordsTest {
    private static final Language SPANISH = Language.of("es");

    @TempDir
    private Path folder;

    private String filled(String template, Language language) throws IOException {
        Files.createDirectories(folder.resolve("note"));
        Files.writeString(folder.resolve("note/page.ftlh"), template);
        Files.writeString(
                folder.resolve("note/words.properties"),
                "due=Pay {0} & smile\nbold=<strong>Pay</strong> {0}, not <this>\n"
                        + "days={0, plural, one {# day} other {# days}}\n");
        Files.writeString(folder.resolve("note/words_es.properties"), "due=Pague {0} con gusto\n");
        return Templates.with(folder).fill("note/page.ftlh", Map.of("who", "Ada & Ben", "n", 2), language);
    }

    @Test
    void aSentenceIsSaidInTheLanguageOfThePaper() throws IOException {
        assertThat(filled("${words('due', who)}", Language.ENGLISH)).isEqualTo("Pay Ada &amp; Ben &amp; smile");
        assertThat(filled("${words('due', who)}", SPANISH)).isEqualTo("Pague Ada &amp; Ben con gusto");
        assertThat(filled("${words('days', n)}", SPANISH))
                .as("said in English where it lacks")
                .isEqualTo("2 days");
    }

    @Test
    void whatSeveralPapersSayIsThereToo() throws IOException {
        assertThat(filled("${words('account.yours')}", SPANISH)).isEqualTo("Su cuenta");
    }

    @Test
    void whatATemplateMadeStaysMarkupAndNothingElseDoes() throws IOException {
        assertThat(filled("<#assign b><i>${who}</i></#assign>${words('due', b)}", Language.ENGLISH))
                .isEqualTo("Pay <i>Ada &amp; Ben</i> &amp; smile");
        assertThat(filled("${words('bold', '<b>')}", Language.ENGLISH))
                .isEqualTo("<strong>Pay</strong> &lt;b&gt;, not &lt;this&gt;");
    }

    /** A customer whose name is a tag, or a character that holds a place, moves nothing on the page. */
    @Test
    void aValueNeverBecomesMarkup() throws IOException {
        assertThat(filled("${words('bold', '<strong>Ada</strong>')}", Language.ENGLISH))
                .isEqualTo("<strong>Pay</strong> &lt;strong&gt;Ada&lt;/strong&gt;, not &lt;this&gt;");
        assertThat(filled("${words('bold', 'Ada\uE000\uF000')}", Language.ENGLISH))
                .isEqualTo("<strong>Pay</strong> Ada, not &lt;this&gt;");
    }

    @Test
    void aKeyThatIsNotThereIsTold() {
        assertThatThrownBy(() -> filled("${words('none')}", Language.ENGLISH))
                .isInstanceOf(TemplateFault.class)
                .hasMessageContaining("there are no words for none");
        assertThatThrownBy(() -> filled("${words('due')}", Language.ENGLISH))
                .isInstanceOf(TemplateFault.class)
                .hasMessageContaining("{0}");
    }
}
