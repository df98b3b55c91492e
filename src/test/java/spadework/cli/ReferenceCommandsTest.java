// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.office.Bid;
import spadework.office.MisuseStages;
import spadework.office.MisuseStages.Stage;
import spadework.office.Office;
import spadework.office.SampleJobFolder;
import spadework.office.reply.TemplateFolder;
import spadework.press.signing.SigningKey;

/**
 * Every block of commands of the reference, line by line as it stands, in a folder as its chapter supposes it: jobs
 * that have come as far as it says. What the reader does between two lines (writes a change into the job, scans a
 * signature) is done before the second one. The window's line is not run, nor those of a shared office, which need a
 * server and are tried one by one with one elsewhere.
 */
class ReferenceCommandsTest {
    private static final Path REFERENCE = Path.of("src/reference/README.md");
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```sh\\n(.*?)^```$");
    private static final Pattern WORD = Pattern.compile("(?:[^\\s\"']|\"(?:[^\"\\\\]|\\\\.)*\"|'[^']*')+");
    private static final Pattern OURS =
            Pattern.compile("(jobs|documents|season|prices\\.xlsx|quarry\\.(csv|json)|crew-log\\.csv"
                    + "|proposal-as-mailed\\.pdf)(/.*)?");
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String QUARRY = """
            Quarry price list,,,
            No.,What,Net,Until
            Q57,"Washed stone, No. 57",33.40,2026-12-31
            """;
    private static final String QUARRY_MAP = """
            {"headRow": 2, "code": "No.", "price": "Net", "goodUntil": "Until", "items": {"Q57": "STONE-MACH"}}
            """;

    @TempDir
    private Path folder;

    /** No key of whoever runs the tests signs a paper here, and none is made for him. */
    @BeforeEach
    void signWithAKeyOfItsOwn() {
        System.setProperty(SigningKey.FILE, folder.resolve("signing-key.p12").toString());
    }

    @AfterEach
    void forgetTheKey() {
        System.clearProperty(SigningKey.FILE);
    }

    static List<List<String>> blocks() throws IOException {
        return BLOCK.matcher(Files.readString(REFERENCE))
                .results()
                .map(block -> block.group(1).lines().toList())
                .filter(lines -> lines.stream().noneMatch(line -> line.contains("office.json")))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("blocks")
    void blockRunsAsItStands(List<String> lines) throws IOException {
        if (!lines.get(0).startsWith("spadework new firm")) {
            suppose(lines.get(0));
        }
        for (String line : lines) {
            if (!line.startsWith("spadework form")) {
                before(line);
                run(line);
            }
        }
    }

    /** The jobs of a chapter, each as far as its commands suppose it. */
    private void suppose(String first) throws IOException {
        Stage stage = Stage.DRAFT;
        if (first.contains(" orders ") || first.contains(" crew ") || first.contains(" account ")) {
            stage = Stage.SIGNED;
        } else if (first.contains(" register ") || first.contains(" season ")) {
            stage = Stage.CLOSED;
        }
        job("2026-014", stage);
    }

    /** A job of the samples below {@code jobs}. */
    private SampleJobFolder job(String number, Stage stage) throws IOException {
        SampleJobFolder made = MisuseStages.at(stage).copy(folder.resolve("made-" + number));
        if (stage == Stage.DRAFT) {
            made.edit(job -> job.put("number", number));
        }
        return moved(made, number);
    }

    private SampleJobFolder moved(SampleJobFolder made, String number) throws IOException {
        Path jobs = Files.createDirectories(folder.resolve("jobs"));
        for (String file : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(Path.of("sample-quotes", file), jobs.resolve(file), StandardCopyOption.REPLACE_EXISTING);
        }
        Files.move(made.folder(), jobs.resolve(number));
        return made;
    }

    private void edit(String number, Consumer<ObjectNode> change) throws IOException {
        Path file = folder.resolve("jobs").resolve(number).resolve("job.json");
        ObjectNode job = (ObjectNode) JSON.readTree(Files.readString(file));
        change.accept(job);
        Files.writeString(file, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(job));
    }

    /** What the reader has done by the time of a line. */
    private void before(String line) throws IOException {
        Path jobs = folder.resolve("jobs");
        if (line.startsWith("spadework lost jobs/2026-021")) {
            job("2026-021", Stage.DRAFT);
            run("spadework issue jobs/2026-021");
        } else if (line.startsWith("spadework book import quarry.csv")) {
            Files.writeString(folder.resolve("quarry.csv"), QUARRY);
            Files.writeString(folder.resolve("quarry.json"), QUARRY_MAP);
        } else if (line.startsWith("spadework change jobs/2026-014 1")) {
            edit("2026-014", job -> job.putArray("changes").add(SampleJobFolder.change(1)));
            Files.writeString(jobs.resolve("2026-014/change-1.jpg"), "a scan");
        } else if (line.startsWith("spadework close jobs/2026-014")) {
            String due = ((Bid) Office.with(TemplateFolder.NONE).bid(jobs.resolve("2026-014")))
                    .dossier()
                    .contract()
                    .total()
                    .text();
            edit("2026-014", job -> SampleJobFolder.finish(job, List.of("A", "B", "C", "W1"), due));
        } else if (line.startsWith("spadework cancel jobs/2026-015")) {
            signed("2026-015");
        } else if (line.startsWith("spadework register check jobs/2026-014 jobs/2026-015")) {
            signed("2026-015");
        } else if (line.startsWith("spadework register check jobs/2026-014 --paper")) {
            Files.copy(
                    jobs.resolve("2026-014/for-the-homeowner/2026-014-P1-proposal.pdf"),
                    folder.resolve("proposal-as-mailed.pdf"));
        } else if (line.startsWith("spadework crew log")) {
            String log = Files.readString(folder.resolve("documents/2026-014/for-the-crew/crew-log.csv"));
            Files.writeString(
                    folder.resolve("crew-log.csv"),
                    log.replaceFirst("(?m)^(started,.*),$", "$1,2026-09-08")
                            .replaceFirst("(?m)^(finished,.*),$", "$1,2026-09-25")
                            .replaceAll("(?m)^(pipes/[^,]*/length,.*,)([^,]*),$", "$1$2,$2"));
        } else if (line.startsWith("spadework feedback jobs --out")) {
            edit("2026-014", ReferenceCommandsTest::built);
        }
    }

    private void signed(String number) throws IOException {
        job(number, Stage.DRAFT);
        run("spadework issue jobs/" + number);
        run("spadework accept jobs/" + number
                + " --on 2026-08-20 --by \"Ida Wrenfield\" --by \"Tobias Wrenfield\" --signature signed.pdf");
    }

    /** Work that took other hours than it was estimated at, and is finished. */
    private static void built(ObjectNode job) {
        ObjectNode built = job.putObject("asBuilt").put("started", "2026-09-08").put("finished", "2026-09-25");
        built.set("actuals", SampleJobFolder.json("""
                [{"code": "DIG-MACH", "quantity": "90 cy", "hours": "16 h"},
                 {"code": "STONE-MACH", "quantity": "20 cy", "hours": "5 h", "material": "$1,400.00"}]"""));
        job.putObject("closed").put("completed", "2026-09-25");
    }

    private void run(String line) {
        StringWriter said = new StringWriter();
        PrintWriter writer = new PrintWriter(said, true);
        int code = Spadework.run(new Spadework(today(line)), writer, writer, words(line));
        assertThat(code).as(line + "\n" + said).isZero();
    }

    /** A day by which all that the line tells of has happened. */
    private static LocalDate today(String line) {
        return line.startsWith("spadework warranty") ? LocalDate.of(2029, 6, 10) : SampleJobFolder.TODAY;
    }

    /** Words as a shell takes them, with the folders of the example below that of the test. */
    private String[] words(String line) {
        List<String> words = new ArrayList<>();
        WORD.matcher(line.substring("spadework ".length()))
                .results()
                .map(word -> word.group().replaceAll("(?<!\\\\)[\"']", "").replace("\\", ""))
                .forEach(words::add);
        words.subList(1, words.size())
                .replaceAll(word ->
                        OURS.matcher(word).matches() ? folder.resolve(word).toString() : word);
        // These look for the book from where they are called, which is the folder of the jobs.
        if (words.get(0).equals("book") && !words.get(1).equals("history") && !words.contains("--book")) {
            words.addAll(List.of("--book", folder.resolve("jobs").toString()));
        }
        return words.toArray(String[]::new);
    }
}
