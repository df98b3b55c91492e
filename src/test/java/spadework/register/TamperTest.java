// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.finding.Fault;
import spadework.warranty.Warranties;

/** Whatever is changed behind the register's back is found. */
class TamperTest {
    private static final long SEED = 20260403;
    private static final LocalDate DAY = LocalDate.of(2026, 4, 3);
    private static final String DOCUMENT = "for-the-homeowner/2026-014-W1-warranty.pdf";

    @TempDir
    Path folder;

    /** Six lines, of which two name a document. */
    @BeforeEach
    void issue() throws IOException {
        Register register = Register.of(folder);
        register.issue(
                DocumentKind.PROPOSAL,
                "2026-014",
                DAY,
                (number, mark) ->
                        Issue.of(Map.of(number + "-proposal.pdf", bytes("proposal")), Map.of("price", "25628.00")));
        register.append(DAY, Event.PROPOSAL_DECLINED, Map.of("who", "Ottoline Marsh"));
        register.issue(
                DocumentKind.CERTIFICATE,
                "2026-014",
                DAY,
                (number, mark) -> Issue.of(
                        Map.of(number + "-warranty.pdf", bytes("The warranty.")), Warranties.of(number.text())));
        register.append(DAY, Event.NOTE, Map.of("who", "Ivo Marsh"));
        assertThat(register.check().faults()).isEmpty();
        assertThat(register.check().lines()).isEqualTo(6);
        assertThat(register.check().documents()).isEqualTo(2);
    }

    @ParameterizedTest(name = "any byte of {0}")
    @ValueSource(strings = {"register.jsonl", "register.head", DOCUMENT, "for-the-homeowner/2026-014-P1-proposal.pdf"})
    void changedByteIsFound(String name) throws IOException {
        Random random = new Random(SEED);
        Path file = folder.resolve(name);
        byte[] whole = Files.readAllBytes(file);
        for (int at = 0; at < whole.length; at++) {
            byte[] changed = whole.clone();
            changed[at] ^= (byte) (1 + random.nextInt(255));
            Files.write(file, changed);
            assertThat(faults())
                    .as("byte %d is %d, seed %d", at, changed[at], SEED)
                    .isNotEmpty();
        }
    }

    @ParameterizedTest(name = "a byte taken out of or put into {0}")
    @ValueSource(strings = {"register.jsonl", "register.head", DOCUMENT})
    void lostAndAddedBytesAreFound(String name) throws IOException {
        Random random = new Random(SEED);
        Path file = folder.resolve(name);
        byte[] whole = Files.readAllBytes(file);
        for (int at = 0; at < whole.length; at++) {
            Files.write(file, spliced(whole, at, 1, new byte[0]));
            assertThat(faults()).as("byte %d lost", at).isNotEmpty();
            byte[] more = {(byte) random.nextInt(256)};
            Files.write(file, spliced(whole, at, 0, more));
            assertThat(faults())
                    .as("byte %d put in at %d, seed %d", more[0], at, SEED)
                    .isNotEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lines")
    void changedOrderOfLinesIsFound(String what, UnaryOperator<List<String>> change, int line) throws IOException {
        Path file = folder.resolve("register.jsonl");
        Files.writeString(
                file,
                String.join(
                        "",
                        change.apply(new ArrayList<>(Files.readString(file)
                                .lines()
                                .map(text -> text + "\n")
                                .toList()))));
        assertThat(faults()).as(what).isNotEmpty();
        assertThat(faults().get(0).place().text()).endsWith(line > 0 ? "register.jsonl:" + line + ":1" : "head");
    }

    static Stream<Arguments> lines() {
        return Stream.of(
                row("a line taken out", lines -> without(lines, 3), 3),
                row("the first line taken out", lines -> without(lines, 1), 1),
                row("a line twice", lines -> with(lines, 4, lines.get(2)), 4),
                row("two lines changed places", lines -> with(without(lines, 2), 3, lines.get(1)), 2),
                row("the last line cut off", lines -> without(lines, 6), 0),
                row("the last three lines cut off", lines -> lines.subList(0, 3), 0),
                row("all lines cut off", lines -> List.of(), 0),
                row("a line written anew, with a seal that fits", TamperTest::written, 4),
                row("the last line written anew, with a seal that fits", TamperTest::writtenLast, 0),
                row("a line of something else put in", lines -> with(lines, 3, "{}\n"), 3),
                row("an empty line put in", lines -> with(lines, 3, "\n"), 3),
                row("something else at the end", lines -> with(lines, 7, "see my letter"), 7));
    }

    @Test
    void lostDocumentIsFoundAndToldWithItsLine() throws IOException {
        Files.delete(folder.resolve(DOCUMENT));
        assertThat(faults()).singleElement().satisfies(fault -> {
            assertThat(fault.place().text()).endsWith(DOCUMENT);
            assertThat(fault.found()).isEqualTo("no such file");
            assertThat(fault.allowed()).startsWith("the file that line 5 of register.jsonl names, with SHA-256 ");
        });
    }

    @Test
    void exchangedDocumentsAreFound() throws IOException {
        Files.copy(
                folder.resolve(DOCUMENT),
                folder.resolve("for-the-homeowner/2026-014-P1-proposal.pdf"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertThat(faults()).singleElement().extracting(Fault::found).asString().startsWith("other bytes, SHA-256 ");
    }

    @Test
    void lostHeadIsFound() throws IOException {
        Files.delete(folder.resolve("register.head"));
        assertThat(faults()).singleElement().extracting(Fault::found).isEqualTo("no such file, or an empty one");
    }

    @Test
    void lostRegisterIsFound() throws IOException {
        Files.delete(folder.resolve("register.jsonl"));
        assertThat(faults()).isNotEmpty();
    }

    /** The last line cut off together with the head that counts it leaves a shorter register that holds. */
    @Test
    void seenSealShowsWhatTheFilesAloneCannot() throws IOException {
        String noted = Register.of(folder).check().seal();
        Path file = folder.resolve("register.jsonl");
        List<String> lines = Files.readString(file).lines().toList().subList(0, 5);
        Files.writeString(file, String.join("\n", lines) + "\n");
        Files.writeString(
                folder.resolve("register.head"),
                "5 " + Register.of(folder).entries().get(4).seal() + "\n");
        assertThat(faults()).isEmpty();
        assertThat(Register.of(folder).entries()).extracting(Entry::seal).doesNotContain(noted);
    }

    /** Sealed anew at the end of a register: it holds in itself, but nothing of ours wrote it. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "{\"line\":7}",
                "{\"line\":7,\"line\":7}",
                "[7]",
                "{\"line\":99999999999}",
                "{\"line\":7,\"on\":\"2026-02-30\",\"event\":\"note\",\"files\":[],\"facts\":{},\"previous\":\"\"}",
                "{\"line\":7,\"on\":\"2026-04-03\",\"event\":\"party\",\"files\":[],\"facts\":{},\"previous\":\"\"}",
                "{\"line\":7,\"on\":\"2026-04-03\",\"event\":\"note\",\"number\":\"7\","
                        + "\"files\":[],\"facts\":{},\"previous\":\"\"}",
                "{\"line\":7,\"on\":\"2026-04-03\",\"event\":\"claim\","
                        + "\"files\":[],\"facts\":{\"cost\":\"much\"},\"previous\":\"\"}"
            })
    void sealedLineThatCannotBeReadIsAFaultAndNoCrash(String object) throws IOException {
        Path file = folder.resolve("register.jsonl");
        String line = new String(Seal.sealed(bytes(object)), StandardCharsets.UTF_8);
        Files.writeString(file, Files.readString(file) + line + "\n");
        assertThat(faults()).isNotEmpty();
        assertThat(faults().get(0).place().text()).endsWith("register.jsonl:7:1");
    }

    @Test
    void documentOutsideOfTheJobFolderIsNotLookedFor() throws IOException {
        Path file = folder.resolve("register.jsonl");
        String text = Files.readString(file);
        String last = text.lines().toList().get(5);
        String outside = resealed(
                last, "\"files\":[]", "\"files\":[{\"name\":\"../secret.pdf\",\"sha256\":\"" + "0".repeat(64) + "\"}]");
        Files.writeString(file, text.replace(last + "\n", outside));
        assertThat(faults()).extracting(Fault::found).contains("a name outside of the job folder");
    }

    private static List<String> written(List<String> lines) {
        lines.set(2, resealed(lines.get(2), "Ottoline", "Ottilie"));
        return lines;
    }

    private static List<String> writtenLast(List<String> lines) {
        lines.set(5, resealed(lines.get(5), "Ivo", "Ida"));
        return lines;
    }

    private static String resealed(String line, String from, String to) {
        String object = line.substring(0, line.indexOf(",\"seal\"")).replace(from, to) + "}";
        return new String(Seal.sealed(bytes(object)), StandardCharsets.UTF_8) + "\n";
    }

    private static Arguments row(String what, UnaryOperator<List<String>> change, int line) {
        return Arguments.of(what, change, line);
    }

    private static List<String> without(List<String> lines, int line) {
        List<String> left = new ArrayList<>(lines);
        left.remove(line - 1);
        return left;
    }

    private static List<String> with(List<String> lines, int line, String text) {
        List<String> more = new ArrayList<>(lines);
        more.add(line - 1, text);
        return more;
    }

    private static byte[] spliced(byte[] whole, int at, int lost, byte[] more) {
        byte[] made = new byte[whole.length - lost + more.length];
        System.arraycopy(whole, 0, made, 0, at);
        System.arraycopy(more, 0, made, at, more.length);
        System.arraycopy(whole, at + lost, made, at + more.length, whole.length - at - lost);
        return made;
    }

    private List<Fault> faults() throws IOException {
        return Register.of(folder).check().faults();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
