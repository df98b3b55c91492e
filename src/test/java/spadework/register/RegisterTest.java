// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.finding.Fault;
import spadework.warranty.Warranties;
import spadework.warranty.Warranty;

class RegisterTest {
    private static final String JOB = "2026-014";
    private static final LocalDate DAY = LocalDate.of(2026, 4, 3);

    @TempDir
    Path folder;

    @Test
    void folderWithoutRegisterHoldsNothingAndNothingIsWrong() throws IOException {
        Examination found = register().check();
        assertThat(found).isEqualTo(new Examination(0, 0, "0".repeat(64), List.of(), List.of()));
        assertThat(folder).as("looking writes nothing").isEmptyDirectory();
    }

    @Test
    void certificateIsFoundAgainWithItsWholeWarranty() throws IOException {
        Entry issued = certificate();
        assertThat(issued.number()).contains(new DocumentNumber(JOB, DocumentKind.CERTIFICATE, 1));
        assertThat(issued.files())
                .containsExactly(new RegisteredFile(
                        "for-the-homeowner/2026-014-W1-warranty.pdf",
                        // printf paper | sha256sum
                        "382635c9325bf3273d195ff1b8a44e5b11afd7d97addeb8863ea35feb98c1a07"));
        Entry found = register().entries().get(1);
        assertThat(found).isEqualTo(issued);
        assertThat(found.warranty()).contains(Warranties.of("2026-014-W1"));
        assertThat(folder.resolve("for-the-homeowner/2026-014-W1-warranty.pdf")).hasContent("paper");
        assertThat(register().check().faults()).isEmpty();
    }

    @Test
    void reissuedWarrantyIsFoundAgainWithTheFirstCertificate() throws IOException {
        certificate();
        Warranty first = Warranties.of("2026-014-W1");
        Entry entry = register()
                .issue(
                        DocumentKind.CERTIFICATE,
                        Event.TRANSFERRED,
                        JOB,
                        DAY,
                        Guard.NONE,
                        (number, mark) -> Issue.of(Map.of(), first.reissued(number.text(), List.of("Anselm Wren"))));
        assertThat(entry.number().map(DocumentNumber::text)).contains("2026-014-W2");
        Warranty second = entry.warranty().orElseThrow();
        assertThat(second.reissueOf()).contains("2026-014-W1");
        assertThat(second.terms().transfers()).isEqualTo(first.terms().transfers() - 1);
        assertThat(second.coverage().parts()).isEqualTo(first.coverage().parts());
    }

    @Test
    void lineIsPlainJsonInOneOrderWithTheSealLast() throws IOException {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("who", "Ottoline \"Otti\" Marsh,\nÅse; \u2028 ½");
        facts.put("price", "25628.00");
        register().append(DAY, Event.NOTE, facts);
        String text = Files.readString(folder.resolve("register.jsonl"));
        assertThat(text)
                .matches("\\{\"line\":1,\"on\":\"2026-04-03\",\"event\":\"note\",\"files\":\\[],\"facts\":\\{"
                        + "\"who\":\"Ottoline \\\\\"Otti\\\\\" Marsh,\\\\nÅse; \u2028 ½\",\"price\":\"25628.00\"},"
                        + "\"previous\":\"0{64}\",\"seal\":\"[0-9a-f]{64}\"}\n");
        assertThat(register().entries().get(0).facts()).isEqualTo(facts);
        assertThat(Files.readString(folder.resolve("register.head")))
                .isEqualTo("1 " + register().entries().get(0).seal() + "\n");
    }

    @Test
    void numbersCountWithinAJobAndAKind() throws IOException {
        Register register = register();
        assertThat(List.of(
                        register.take(DocumentKind.PROPOSAL, JOB, DAY).text(),
                        register.take(DocumentKind.PROPOSAL, JOB, DAY).text(),
                        register.take(DocumentKind.CERTIFICATE, JOB, DAY).text(),
                        register.take(DocumentKind.CLAIM, JOB, DAY).text(),
                        register.take(DocumentKind.CHANGE_ORDER, JOB, DAY).text(),
                        register.take(DocumentKind.PROPOSAL, "2026-015", DAY).text()))
                .containsExactly(
                        "2026-014-P1", "2026-014-P2", "2026-014-W1", "2026-014-CL1", "2026-014-C1", "2026-015-P1");
    }

    @Test
    void numberOfADocumentThatCouldNotBeMadeIsAGapAndNotUsedAgain() throws IOException {
        assertThatThrownBy(() -> register().issue(DocumentKind.CERTIFICATE, JOB, DAY, (number, mark) -> {
                    throw new IllegalStateException("no paper");
                }))
                .hasMessage("no paper");
        assertThat(certificate().number().map(DocumentNumber::text)).contains("2026-014-W2");
        Examination found = register().check();
        assertThat(found.faults()).isEmpty();
        assertThat(found.advice())
                .singleElement()
                .extracting(Fault::found)
                .isEqualTo("the number 2026-014-W1, taken on 2026-04-03 and never issued");
    }

    @Test
    void wholeFileThatNoLineNamesIsToldAndNothingWorse() throws IOException {
        certificate();
        Files.writeString(folder.resolve("for-the-homeowner/2026-014-W2-warranty.pdf"), "paper");
        Examination found = register().check();
        assertThat(found.faults()).isEmpty();
        assertThat(found.advice()).singleElement().extracting(Fault::found).isEqualTo("a file that no line names");
    }

    @Test
    void documentIsNeverWrittenOver() throws IOException {
        Register register = register();
        register.issue(
                DocumentKind.CARD, JOB, DAY, (number, mark) -> Issue.of(Map.of("card.pdf", bytes("one")), Map.of()));
        assertThatThrownBy(() -> register.issue(
                        DocumentKind.CARD,
                        JOB,
                        DAY,
                        (number, mark) -> Issue.of(Map.of("card.pdf", bytes("two")), Map.of())))
                .isInstanceOf(FileAlreadyExistsException.class)
                .hasMessageContaining("never written over");
        assertThat(folder.resolve("for-the-homeowner/card.pdf")).hasContent("one");
    }

    @Test
    void documentLiesInItsFolderWhateverItsName() {
        for (String name : List.of("../job.json", "/etc/x", "a/b.pdf", "a\\b.pdf", ".hidden", "", "c:x.pdf", "a\nb")) {
            assertThatThrownBy(() -> register()
                            .issue(
                                    DocumentKind.CARD,
                                    JOB,
                                    DAY,
                                    (number, mark) -> Issue.of(Map.of(name, bytes("x")), Map.of())))
                    .as(name)
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void guardSeesWhatIsRegisteredAndKeepsTheEntryOut() throws IOException {
        certificate();
        Guard once = entries -> {
            if (entries.stream().anyMatch(entry -> entry.event() == Event.CERTIFICATE_ISSUED)) {
                throw new IllegalStateException("issued already");
            }
        };
        assertThatThrownBy(() -> register()
                        .issue(
                                DocumentKind.CERTIFICATE,
                                Event.CERTIFICATE_ISSUED,
                                JOB,
                                DAY,
                                once,
                                (number, mark) -> Issue.of(Map.of(), Map.of())))
                .hasMessage("issued already");
        assertThat(register().entries()).as("no number was used up").hasSize(2);
    }

    @Test
    void halfALineLeftByACrashIsToldAndReplaced() throws IOException {
        certificate();
        Path file = folder.resolve("register.jsonl");
        String before = Files.readString(file);
        for (int length : new int[] {1, 9, 11, 60}) {
            String half = "{\"line\":3,\"on\":\"2026-04-03\",\"event\":\"note\",\"files\":[],\"facts\":{}"
                    .substring(0, length);
            Files.writeString(file, before + half);
            Examination found = register().check();
            assertThat(found.faults()).as(half).isEmpty();
            assertThat(found.advice())
                    .as(half)
                    .singleElement()
                    .extracting(Fault::found)
                    .asString()
                    .startsWith("half a line");
        }
        register().append(DAY, Event.NOTE, Map.of());
        assertThat(register().check()).satisfies(found -> {
            assertThat(found.lines()).isEqualTo(3);
            assertThat(found.faults()).isEmpty();
            assertThat(found.advice()).isEmpty();
        });
        assertThat(Files.readString(file)).startsWith(before).endsWith("\n");
    }

    @Test
    void zerosLeftByALossOfPowerAreReplaced() throws IOException {
        certificate();
        Path file = folder.resolve("register.jsonl");
        Files.writeString(file, Files.readString(file) + "\0".repeat(500));
        register().append(DAY, Event.NOTE, Map.of());
        assertThat(register().check().faults()).isEmpty();
    }

    @Test
    void wholeLastLineWithoutItsLineFeedIsKeptAndCompleted() throws IOException {
        certificate();
        Path file = folder.resolve("register.jsonl");
        String whole = Files.readString(file);
        Files.writeString(file, whole.substring(0, whole.length() - 1));
        register().append(DAY, Event.NOTE, Map.of());
        assertThat(Files.readString(file)).startsWith(whole);
        assertThat(register().check().faults()).isEmpty();
        assertThat(register().entries()).hasSize(3);
    }

    @Test
    void headThatIsOneBehindIsToldAndBroughtUpToDate() throws IOException {
        certificate();
        String behind = Files.readString(folder.resolve("register.head"));
        register().append(DAY, Event.NOTE, Map.of());
        Files.writeString(folder.resolve("register.head"), behind);
        assertThat(register().check().faults()).isEmpty();
        assertThat(register().check().advice())
                .singleElement()
                .extracting(Fault::fix)
                .asString()
                .contains("brings it up to date");
        register().append(DAY, Event.NOTE, Map.of());
        assertThat(register().check().advice()).isEmpty();
    }

    @Test
    void nothingIsAppendedToARegisterThatWasChanged() throws IOException {
        certificate();
        Path file = folder.resolve("register.jsonl");
        String changed = Files.readString(file).replace("Ottoline", "Ottilie");
        Files.writeString(file, changed);
        assertThatThrownBy(() -> register().append(DAY, Event.NOTE, Map.of()))
                .isInstanceOf(RegisterBroken.class)
                .hasMessageStartingWith("Nothing was registered: the register was changed. ")
                .hasMessageContaining("register.jsonl:2:1: found a line whose bytes do not fit its seal; allowed: line"
                        + " 2 as it was written; fix: bring register.jsonl back from a copy of the job folder");
        assertThat(file).hasContent(changed);
    }

    @Test
    void unfinishedFilesOfACrashAreTakenAway() throws IOException {
        certificate();
        Path left = folder.resolve("for-the-homeowner/.2026-014-W2-warranty.pdf.1f.part");
        Files.writeString(left, "half");
        register().issue(DocumentKind.CARD, JOB, DAY, (number, mark) -> Issue.of(Map.of(), Map.of()));
        assertThat(left).doesNotExist();
    }

    private Entry certificate() throws IOException {
        return register()
                .issue(
                        DocumentKind.CERTIFICATE,
                        JOB,
                        DAY,
                        (number, mark) -> Issue.of(
                                Map.of(number + "-warranty.pdf", bytes("paper")), Warranties.of(number.text())));
    }

    private Register register() {
        return Register.of(folder);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(UTF_8);
    }
}
