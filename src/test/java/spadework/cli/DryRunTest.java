// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import spadework.cli.option.DryRunOption;
import spadework.office.SampleJobFolder;

/** One rule for all commands: what writes, writes at once, and with {@code --dry-run} not a byte. */
class DryRunTest {
    /** Commands that only show. Every other one has the option. */
    private static final Set<String> ONLY_SHOW = Set.of(
            "price",
            "check",
            "bids",
            "form",
            "book list",
            "book find",
            "book show",
            "book history",
            "register check",
            "register list",
            "warranty list",
            "warranty show",
            "key show",
            "office history",
            "office jobs",
            "office who");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    Path folder;

    private int run(String... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Spadework.run(
                new Spadework(LocalDate.of(2026, 11, 20)),
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                arguments);
    }

    @Test
    void everyCommandThatWritesHasTheOptionAndNoOther() {
        Set<String> without = new TreeSet<>();
        collect(new CommandLine(new Spadework()), "", without);
        without.removeIf(name -> name.startsWith("figure "));
        assertThat(without).isEqualTo(new TreeSet<>(ONLY_SHOW));
    }

    private static void collect(CommandLine line, String above, Set<String> without) {
        line.getSubcommands().forEach((name, command) -> {
            String whole = (above + " " + name).strip();
            if (!command.getSubcommands().isEmpty()) {
                collect(command, whole, without);
            } else if (command.getCommandSpec().findOption(DryRunOption.NAME) == null) {
                without.add(whole);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "issue JOB",
                "documents JOB --out ROOT/documents --only proposal",
                "copy JOB ROOT/new --number N-1 --customer Someone",
                "reprice JOB --on 2026-08-11",
                "set JOB title=Other",
                "add payment JOB on=2026-08-20 amount=$1.00 how=cash",
                "new job ROOT/first",
                "book change STONE-MACH material/cost=$33.00 --book ROOT/price-book.json --on 2026-08-11 --reason list",
                "book export ROOT/prices.xlsx --book ROOT/price-book.json",
                "key make --name Example --out ROOT/key.p12"
            })
    void aDryRunTellsWhatItWouldWriteAndWritesNothing(String line) throws IOException {
        SampleJobFolder site = SampleJobFolder.in(folder);
        List<String> words = new ArrayList<>(Arrays.stream(line.split(" "))
                .map(word -> word.equals("JOB") ? site.folder().toString() : word.replace("ROOT", folder.toString()))
                .toList());
        Map<String, String> before = tree();
        words.add(DryRunOption.NAME);
        assertThat(run(words.toArray(String[]::new))).as(err.toString()).isZero();
        assertThat(tree()).isEqualTo(before);
        assertThat(out.toString()).startsWith("Dry run: nothing is written.").contains("this would be written:\n  /");

        words.remove(DryRunOption.NAME);
        assertThat(run(words.toArray(String[]::new))).as(err.toString()).isZero();
        assertThat(tree()).as("the same without the option").isNotEqualTo(before);
    }

    @Test
    void whatRefusesTheStepRefusesItDry() throws IOException {
        SampleJobFolder site = SampleJobFolder.in(folder);
        Map<String, String> before = tree();
        assertThat(run("accept", site.folder().toString(), "--on", "2026-08-20", "--by", "Nobody", "--dry-run"))
                .isEqualTo(1);
        assertThat(err.toString()).contains("No proposal was issued");
        assertThat(out.toString()).doesNotContain("would be written");
        assertThat(tree()).isEqualTo(before);
    }

    private Map<String, String> tree() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.toList()) {
                files.put(
                        folder.relativize(file).toString(),
                        Files.isDirectory(file) ? "" : Base64.getEncoder().encodeToString(Files.readAllBytes(file)));
            }
        }
        return files;
    }
}
