// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import spadework.cli.option.ExitCode;
import spadework.office.files.OfficeLanguage;
import spadework.wording.Language;
import spadework.wording.Wording;

/** The help of every command is whole in the language that the office reads. */
class CommandHelpTest {
    private static final ResourceBundle SPANISH =
            Wording.translated("spadework.cli.help", Language.of("es")).orElseThrow();

    @TempDir
    Path folder;

    @AfterEach
    void noLanguageAsked() {
        System.clearProperty(OfficeLanguage.PROPERTY);
    }

    @Test
    void everyTextOfEveryCommandIsThereAndNoOther() {
        assertThat(SPANISH.keySet()).isEqualTo(CommandTexts.english().keySet()).hasSizeGreaterThan(250);
    }

    /** No flag is told by the words of another command's flag of the same name. */
    @Test
    void whatIsSaidAlikeInEnglishIsSaidAlikeAndNothingElseIs() {
        System.setProperty(OfficeLanguage.PROPERTY, "es");
        CommandLine line = new CommandLine(new Spadework());
        HelpLanguage.speak(line);
        List<CommandTexts.Said> spanish = CommandTexts.all(line);
        List<CommandTexts.Said> english = CommandTexts.all(new CommandLine(new Spadework()));
        assertThat(spanish).hasSameSizeAs(english);
        Map<String, String> there = new LinkedHashMap<>();
        Map<String, String> back = new LinkedHashMap<>();
        for (int i = 0; i < english.size(); i++) {
            String from = english.get(i).text();
            String to = spanish.get(i).text();
            assertThat(spanish.get(i).ofCommand()).isEqualTo(english.get(i).ofCommand());
            assertThat(to).as(english.get(i).ofCommand()).isNotEqualTo(from);
            assertThat(there.merge(from, to, (one, other) -> one)).as(from).isEqualTo(to);
            assertThat(back.merge(to, from, (one, other) -> one)).as(to).isEqualTo(from);
        }
    }

    /** Words that are typed stay as they are: names of flags, of values, of files. */
    @Test
    void flagsAndValuesThatAreTypedStandInBoth() {
        Map<String, String> missing = new TreeMap<>();
        CommandTexts.english()
                .forEach((key, text) -> java.util.regex.Pattern.compile(
                                "--[a-z-]+|[a-z-]+\\.(?:json|pdf|xlsx)|\\$\\{[A-Z-]+}|%%|SPADEWORK_[A-Z_]+")
                        .matcher(text)
                        .results()
                        .map(java.util.regex.MatchResult::group)
                        .filter(typed -> !SPANISH.getString(key).contains(typed))
                        .forEach(typed -> missing.put(key, typed)));
        assertThat(missing).isEmpty();
    }

    @Test
    void helpIsInTheLanguageOfTheCompanyOfTheNamedFolder() throws IOException {
        Path job = Files.createDirectories(folder.resolve("jobs/2026-001"));
        assertThat(said("price", job.toString(), "--help")).contains("Usage: spadework price", "Print the answer");
        Files.writeString(folder.resolve("jobs/company.json"), "{\"officeLanguage\": \"es\"}");
        assertThat(said("price", job.toString(), "--help"))
                .contains("Uso: spadework price", "Imprime la respuesta como JSON.", "Ejemplo:")
                .doesNotContain("Usage:", "Print the answer");
    }

    @Test
    void commandThatCannotBeReadShowsItsUsageInThatLanguageToo() {
        System.setProperty(OfficeLanguage.PROPERTY, "es");
        assertThat(said("check")).contains("Uso: spadework check", "carpeta con su job.json");
    }

    @Test
    void withoutArgumentsAllCommandsAreListedInThatLanguage() {
        System.setProperty(OfficeLanguage.PROPERTY, "es");
        assertThat(said()).contains("Uso: spadework", "Comandos:", "Códigos de salida:");
    }

    private static String said(String... arguments) {
        StringWriter words = new StringWriter();
        PrintWriter writer = new PrintWriter(words);
        int code = Spadework.run(writer, writer, arguments);
        assertThat(code).isIn(ExitCode.DONE, ExitCode.UNUSABLE);
        return words.toString();
    }
}
