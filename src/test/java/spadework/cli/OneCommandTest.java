// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import spadework.cli.option.Program;

/** A program made for one command says and takes what the whole program does. */
class OneCommandTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 9, 1);

    /** Every command and every command inside one. */
    static Stream<String> commands() {
        List<String> all = new ArrayList<>();
        collect(new CommandLine(new Spadework(TODAY)), "", all);
        assertThat(all).hasSizeGreaterThan(50);
        return all.stream();
    }

    private static void collect(CommandLine line, String path, List<String> all) {
        line.getSubcommands().forEach((name, inside) -> {
            all.add((path + " " + name).strip());
            collect(inside, path + " " + name, all);
        });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commands")
    void helpIsTheSame(String command) {
        String[] asked = (command + " --help").split(" ");
        CommandLine one = OneCommand.of(TODAY, asked).orElseThrow();
        assertThat(one.getSubcommands()).containsOnlyKeys(asked[0]);
        assertThat(said(one, asked)).isEqualTo(said(new CommandLine(new Spadework(TODAY)), asked));
    }

    @Test
    void versionAndOfficeAreTaken() {
        String[] asked = {"price", "--version"};
        assertThat(said(OneCommand.of(TODAY, asked).orElseThrow(), asked)).startsWith("spadework ");
        CommandLine one = OneCommand.of(TODAY, "price").orElseThrow();
        assertThat(one.parseArgs("price", "jobs/2026-014", "--office", "office.json")
                        .subcommand()
                        .matchedArgs())
                .isNotEmpty();
        assertThat(((Program) one.getCommandSpec().userObject()).today()).isEqualTo(TODAY);
    }

    @ParameterizedTest(name = "[{0}]")
    @ValueSource(strings = {"", "--help", "prise", "--office"})
    void anythingElseIsForTheWholeProgram(String first) {
        assertThat(OneCommand.of(TODAY, first.isEmpty() ? new String[0] : new String[] {first, "price"}))
                .isEmpty();
    }

    private static String said(CommandLine line, String... arguments) {
        StringWriter said = new StringWriter();
        PrintWriter writer = new PrintWriter(said);
        line.setOut(writer).setErr(writer).execute(arguments);
        return said.toString();
    }
}
