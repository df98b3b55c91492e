// SPDX-License-Identifier: Apache-2.0
package spadework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import spadework.cli.Spadework;

/** The first page of the README, line by line: from an empty folder to the papers of a job that is no sample. */
class ReadmeFirstPageTest {
    private static final Pattern WORD = Pattern.compile("(?:[^\\s\"']|\"(?:[^\"\\\\]|\\\\.)*\"|'[^']*')+");

    /** Commands and edits that it may take. */
    private static final int MOST = 10;

    @TempDir
    Path folder;

    @Test
    void everyLineRunsAndTheLastOnePrintsThePapers() throws IOException {
        List<String> lines = Guide.readme().under("Five minutes").blocks("sh").stream()
                .flatMap(String::lines)
                .filter(line -> line.startsWith("spadework "))
                .filter(line -> !line.startsWith("spadework form"))
                .toList();
        assertThat(lines).hasSizeBetween(5, MOST);
        for (String line : lines) {
            StringWriter said = new StringWriter();
            PrintWriter writer = new PrintWriter(said, true);
            int code = new CommandLine(new Spadework())
                    .setOut(writer)
                    .setErr(writer)
                    .execute(words(line.substring("spadework ".length())));
            assertThat(code).as(line + "\n" + said).isZero();
        }
        try (Stream<Path> papers = Files.walk(folder.resolve("papers"))) {
            assertThat(papers.map(file -> file.getFileName().toString()))
                    .contains("proposal.pdf", "proposal.xlsx", "scope-of-work.pdf", "cost-sheet.pdf");
        }
    }

    /** Words as a shell takes them, with the folders of the example below that of the test. */
    private String[] words(String line) {
        List<String> words = new ArrayList<>();
        WORD.matcher(line)
                .results()
                .map(word -> word.group().replaceAll("(?<!\\\\)[\"']", "").replace("\\", ""))
                .forEach(words::add);
        words.replaceAll(word ->
                word.matches("(jobs|papers)(/.*)?") ? folder.resolve(word).toString() : word);
        return words.toArray(String[]::new);
    }
}
