// SPDX-License-Identifier: Apache-2.0
package spadework.office.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.office.reply.Reply;
import spadework.press.PageFixtures;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;
import spadework.register.DocumentKind;
import spadework.register.Event;
import spadework.register.Issue;
import spadework.register.Register;

/** A paper in the homeowner's hands against a folder that somebody worked on afterwards. */
class PaperCheckTest {
    private static final String JOB = "2026-014";
    private static final PagePress PRESS = new PagePress(Templates.bundled());

    @TempDir
    private Path root;

    private Path job;
    private Path paper;

    @BeforeEach
    void issueAndMail() throws IOException {
        job = Files.createDirectory(root.resolve("job"));
        Register register = Register.of(job);
        issue(register, "first");
        register.append(PageFixtures.INFO.issued(), Event.NOTE, Map.of("text", "seen"));
        issue(register, "second");
        paper = Files.copy(job.resolve("for-the-homeowner/2026-014-P2-proposal.pdf"), root.resolve("mailed.pdf"));
        issue(register, "third");
    }

    private static void issue(Register register, String author) throws IOException {
        register.issue(DocumentKind.PROPOSAL, JOB, PageFixtures.INFO.issued(), (number, mark) -> {
            PageInfo info = new PageInfo("en-US", author, PageFixtures.INFO.issued(), mark.text());
            return Issue.of(
                    Map.of(number + "-proposal.pdf", PRESS.print("proposal", PageFixtures.proposalModel(), info)),
                    Map.of());
        });
    }

    private Reply check() throws IOException {
        return RegisterService.check(job, List.of(paper));
    }

    @Test
    void registerThatOnlyGrewHolds() throws IOException {
        assertThat(check().err()).isEmpty();
        assertThat(check().out()).anyMatch(line -> line.contains("mailed.pdf: the register has the line"));
    }

    @Test
    void registerThatWasCutBackBeforeThePaperIsFound() throws IOException {
        cut(3);
        assertThat(check().err()).anyMatch(line -> line.contains("it was cut off after the paper"));
    }

    /** Cut just behind the line that took the paper's number: the mark is there, the paper is not. */
    @Test
    void registerThatWasCutBackBetweenTheNumberAndThePaperIsFound() throws IOException {
        cut(4);
        assertThat(check().err()).anyMatch(line -> line.contains("a paper that no line of the register"));
    }

    @Test
    void registerThatWasWrittenAnewIsFoundThoughItHoldsInItself() throws IOException {
        Path anew = Files.createDirectory(root.resolve("anew"));
        Register register = Register.of(anew);
        issue(register, "other");
        register.append(PageFixtures.INFO.issued(), Event.NOTE, Map.of("text", "other"));
        issue(register, "other");
        assertThat(register.check().faults()).isEmpty();
        job = anew;
        assertThat(check().err()).hasSize(1).allMatch(line -> line.contains("it was written anew after the paper"));
    }

    @Test
    void paperWithoutACodeIsTold() throws IOException {
        Files.write(paper, PRESS.print("proposal", PageFixtures.proposalModel(), PageFixtures.INFO));
        assertThat(check().err()).anyMatch(line -> line.contains("no record code at the foot"));
    }

    /** Cuts the register to so many lines, and its head with it, as somebody who knows both would. */
    private void cut(int lines) throws IOException {
        List<String> all = Files.readAllLines(job.resolve("register.jsonl"), StandardCharsets.UTF_8);
        List<String> kept = all.subList(0, lines);
        Files.writeString(job.resolve("register.jsonl"), String.join("\n", kept) + "\n");
        String seal = kept.get(lines - 1).replaceAll(".*\"seal\":\"([0-9a-f]{64})\".*", "$1");
        Files.writeString(job.resolve("register.head"), lines + " " + seal + "\n");
    }
}
