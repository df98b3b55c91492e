// SPDX-License-Identifier: Apache-2.0
package spadework.press.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.money.Dollars;
import spadework.paperwork.part.PriceRow;

class TemplatesTest {

    @TempDir
    Path folder;

    private static final Map<String, Object> MODEL =
            Map.of("row", new PriceRow("Wall <A> & \"B\"", "${1+1}", Dollars.of("1234.50")));

    @ParameterizedTest(name = "{0} prints {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # the extension decides the escaping; what a record holds is printed, never read as a template
            a.ftlh | ${row.name}             | Wall &lt;A&gt; &amp; &quot;B&quot;
            a.ftlx | ${row.name}             | Wall &lt;A&gt; &amp; &quot;B&quot;
            b.ftlh | ${row.includes}         | ${1+1}
            # records are read by component and by method
            c.ftlx | ${row.price.text}       | $1,234.50
            c.ftlh | ${row.price.amount()}   | 1234.5
            # numbers are never grouped and never follow the machine's locale
            d.ftlx | ${1234567.5}            | 1234567.5
            """)
    void fillsATemplate(String name, String text, String printed) {
        assertThat(with(name, text).fill(name, MODEL)).isEqualTo(printed);
    }

    @ParameterizedTest(name = "{0} is refused at {1}:{2}")
    @CsvSource(delimiter = '|', textBlock = """
            # a value that the record does not have
            ${row.nmae}                                    | 1 | 3  | it asks for row.nmae, which is not there
            # a template that is malformed: the place is where it stops making sense
            <#if true>                                     | 1 | 10 | #if
            # a template cannot make objects or reach classes
            ${"freemarker.template.utility.Execute"?new()} | 1 | 1  | not allowed
            ${row?api.name()}                              | 1 | 3  | api_builtin_enabled
            """)
    void aFaultNamesTemplateLineAndColumn(String text, int line, int column, String says) {
        assertThatThrownBy(() -> with("x.ftlh", text).fill("x.ftlh", MODEL))
                .asInstanceOf(type(TemplateFault.class))
                .satisfies(fault -> {
                    assertThat(fault.template()).isEqualTo("x.ftlh");
                    assertThat(fault.line()).isEqualTo(line);
                    assertThat(fault.column()).isEqualTo(column);
                    assertThat(fault)
                            .hasMessageStartingWith("x.ftlh:" + line + ":" + column + ": ")
                            .hasMessageContaining(says);
                });
    }

    /** What a signed job keeps of its papers is what the index names: none may be left out. */
    @Test
    void theIndexNamesEveryTextOfTheFolder() throws IOException {
        Path folder = Path.of("templates");
        try (Stream<Path> files = Files.walk(folder)) {
            assertThat(Templates.bundled().texts().keySet())
                    .containsExactlyInAnyOrderElementsOf(
                            files.map(file -> folder.relativize(file).toString().replace('\\', '/'))
                                    .filter(name -> name.matches(".*\\.(ftlh|ftlx|css|properties)"))
                                    .toList());
        }
    }

    @Test
    void aMissingTemplateIsNamed() {
        assertThatThrownBy(() -> Templates.bundled().fill("none/page.ftlh", Map.of()))
                .isInstanceOf(TemplateFault.class)
                .hasMessage("none/page.ftlh: there is no such template");
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        Path none = folder.resolve("none");
        assertThatThrownBy(() -> Templates.with(none))
                .isInstanceOf(TemplateFault.class)
                .hasMessageContaining(none.toString());
    }

    @Test
    void wordsAreReadAsUtf8InTheOrderOfTheirKeys() {
        assertThat(with("words/w.properties", "b = 6″ of fall\na = ½ in\n").words("words/w.properties"))
                .containsExactly(Map.entry("a", "½ in"), Map.entry("b", "6″ of fall"));
    }

    @Test
    void wordsOfAnOldFileAreFoundInTheSpellingOfToday() {
        assertThat(with(
                                "words/w.properties",
                                "limit.neighbour-footing = next door\nlimit.licence = old\nlimit.license = new\n")
                        .words("words/w.properties"))
                .containsEntry("limit.neighbor-footing", "next door")
                .containsEntry("limit.license", "new");
    }

    @Test
    void aPrintedDecimalIsExact() {
        assertThat(with("n.ftlx", "${n}").fill("n.ftlx", Map.of("n", new BigDecimal("12345678901234.56"))))
                .isEqualTo("12345678901234.56");
    }

    private Templates with(String name, String text) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, text, StandardCharsets.UTF_8);
            return Templates.with(folder);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
