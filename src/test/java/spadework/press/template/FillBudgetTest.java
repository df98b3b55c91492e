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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A template that does not end is told by its name, and the program goes on. */
class FillBudgetTest {
    @TempDir
    private Path folder;

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            <#list 1.. as i><#assign x = i></#list>                    | to fill; look for a loop
            <#list 1.. as i>0123456789012345678901234567890123456789</#list> | million characters
            <#macro m><@m/></#macro><@m/>                              | nested too deep
            <#assign x="0123456789abcdef"><#list 1..60 as i><#assign x = x + x></#list> | memory
            """)
    void templateWithoutAnEndIsTold(String text, String words) throws IOException {
        Files.writeString(folder.resolve("page.ftlh"), text);
        Templates templates = Templates.with(folder);
        assertThatThrownBy(() -> templates.fill("page.ftlh", Map.of()))
                .isInstanceOf(TemplateFault.class)
                .hasMessageStartingWith("page.ftlh")
                .hasMessageContaining(words);
        assertThat(Thread.currentThread().isInterrupted()).isFalse();
        Files.writeString(folder.resolve("page.ftlh"), "${title}");
        assertThat(Templates.with(folder).fill("page.ftlh", Map.of("title", "Back wall")))
                .isEqualTo("Back wall");
    }

    @Test
    void templateOfTheContractorsOwnIsFilledAsBefore() throws IOException {
        Files.writeString(folder.resolve("page.ftlh"), "<#list 1..3 as i>${i}</#list>");
        assertThat(Templates.with(folder).fill("page.ftlh", Map.of())).isEqualTo("123");
    }
}
