// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.law.LegalNotice;
import spadework.law.NoticeCase;
import spadework.law.StateRules;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.paperwork.ContractJobs;
import spadework.press.PageText;
import spadework.samples.Samples;

/**
 * The contract of each state as it was read from the first word to the last, beside its proposal and certificate: how
 * long the buyer may cancel, which notices stand in it, what nobody has read, and that the papers agree. Signed on
 * Wednesday, July 1, 2026, by a buyer of 67. July 3 is the observed day of Independence Day.
 *
 * <p>Days and notices from the laws that the rules cite, as far as each was read. Column "unread": what of the state's
 * rules is known from memory alone, so that the contract is a draft until counsel has read it.
 */
class FourteenStatesTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}: {1} business day, until {2}")
    @CsvSource(delimiter = '|', textBlock = """
        CA | fifth   | July 9, 2026  | lien notice; licensing board notice; workers compensation notice; liability insurance notice; right to cancel notice; lien release note; down payment statement; progress payment statement; extra work note; subcontractor disclosure | contents
        CT | third   | July 7, 2026  | right to cancel notice                                                      | deposit
        FL | third   | July 7, 2026  | lien law notice; recovery fund notice; defect claim notice; right to cancel notice | cancel
        IL | third   | July 7, 2026  | consumer pamphlet acknowledgement                                           | cancel
        MA | third   | July 7, 2026  | registration notice; permit notice; right to cancel notice                  | cancel
        MD | seventh | July 10, 2026 | commission telephone and website; guaranty fund and performance bond; right to cancel notice |
        NC | third   | July 7, 2026  |                                                                             | deposit
        NJ | third   | July 7, 2026  | right to cancel notice                                                      | deposit
        NY | third   | July 7, 2026  | lien notice                                                                 | type
        OH | third   | July 7, 2026  | excess cost notice                                                          | cancel
        PA | third   | July 7, 2026  | attorney general telephone; right to cancel notice                          |
        TX | third   | July 7, 2026  | disclosure before signing; homestead warning; defect claim notice; right to cancel notice; list of suppliers | deposit
        VA | third   | July 7, 2026  | recovery fund notice; consumer protection statement                         | cancel
        WA | third   | July 7, 2026  | notice to customer                                                          | cancel
        """)
    void contractReadsAsTheLawOfTheStateAsks(
            String state, String ordinal, String lastDay, String notices, String unread) throws IOException {
        Path job = ContractJobs.in(folder, state);
        StateRules rules = ContractJobs.bid(job).contracted().law().state().orElseThrow();
        List<String> expected = Optional.ofNullable(notices)
                .map(names -> Arrays.asList(names.split("; ")))
                .orElse(List.of());
        assertThat(rules.notices())
                .filteredOn(notice -> notice.wording().isEmpty() && notice.when() != NoticeCase.SECURED_ON_THE_HOME)
                .extracting(LegalNotice::name)
                .as("words that are counsel's to give")
                .containsExactlyElementsOf(expected);
        assertThat(rules.facts().containsValue("M") || !rules.fromMemory().isEmpty())
                .as("something rests on memory")
                .isEqualTo(unread != null);
        assertThat(unread == null || rules.facts().get(unread).equals("M"))
                .as(unread)
                .isTrue();

        Map<String, String> before = papers(job, "before", EnumSet.of(PaperKind.CONTRACT, PaperKind.COST_SHEET));
        String wanting = before.get("cost-sheet");
        String inside = "What is known of the law of " + state + " rests in part on memory";
        assertThat(before.get("contract"))
                .contains("Draft, not for signature")
                .doesNotContain("wants a notice in the contract", inside);
        expected.forEach(name -> assertThat(wanting).contains(state + " wants a notice in the contract, " + name));
        assertThat(wanting.contains(inside)).isEqualTo(unread != null);
        assertThat(wanting).contains("Before anybody signs the contract");
        String page = wanting.substring(wanting.indexOf("Before anybody signs the contract"));
        expected.forEach(name -> assertThat(page.substring(0, page.indexOf("Findings")))
                .as("told on one page, with where it is written")
                .contains(state + " wants a notice in the contract, " + name, "state's rules of the job"));

        words(rules);
        Map<String, String> after =
                papers(job, "after", EnumSet.of(PaperKind.CONTRACT, PaperKind.PROPOSAL, PaperKind.WARRANTY));
        String contract = after.get("contract");
        assertThat(contract)
                .contains("prior to midnight of the " + ordinal + " business day after the date of this transaction")
                .contains("Last day to cancel " + lastDay + ", until midnight", "The last day to cancel is " + lastDay)
                .contains("NOT LATER THAN MIDNIGHT OF " + lastDay)
                .doesNotContain("Draft", "its wording is to be added", "not verified", "from memory");
        assertThat(contract.contains("Your days start when you receive a copy of this contract"))
                .as("N.J.S.A. 56:8-151 counts from the day on which the buyer receives a copy")
                .isEqualTo(state.equals("NJ"));
        expected.forEach(name -> assertThat(contract).contains("Words of counsel: " + name + "."));
        assertThat(count(contract, "I HEREBY CANCEL THIS TRANSACTION"))
                .as("two for each buyer")
                .isEqualTo(4);
        agree(after);
    }

    /** One first day of the warranty, one deposit, one start and one finish in all three papers. */
    private static void agree(Map<String, String> papers) {
        assertThat(papers.get("contract")).contains("from the day the work is complete, which the certificate names");
        assertThat(papers.get("proposal")).contains("Limited warranty from the day the work is complete");
        assertThat(papers.get("warranty")).contains("A term begins on the day the work is complete");
        assertThat(papers.values()).noneMatch(text -> text.contains("from the day the job is closed"));
        for (String figure : List.of("$755.16", "September 14, 2026", "October 2, 2026", "$25,172.00")) {
            assertThat(papers.get("contract")).contains(figure);
            assertThat(papers.get("proposal")).contains(figure);
        }
    }

    private static int count(String text, String words) {
        return text.split(Pattern.quote(words), -1).length - 1;
    }

    private void words(StateRules rules) throws IOException {
        String known = rules.notices().stream()
                .map(notice -> "{\"notice\": \"" + notice.name() + "\", \"wording\": \"Words of counsel: "
                        + notice.name() + ".\", \"capitals\": false}")
                .collect(Collectors.joining(", "));
        Files.writeString(
                folder.resolve("state-rules.json"),
                "{\"packs\": [{\"state\": \"" + rules.state() + "\", \"counsel\": {\"by\": \"Cy Test\", \"on\":"
                        + " \"2026-06-01\"}, \"notices\": [" + known + "]}]}");
    }

    private static Map<String, String> papers(Path job, String out, EnumSet<PaperKind> kinds) throws IOException {
        Outcome outcome = Samples.office().documents(job, job.resolve(out), kinds);
        Map<String, String> texts = new TreeMap<>();
        for (Path file : ((Outcome.Printed) outcome).files()) {
            String name = file.getFileName().toString();
            if (name.endsWith(".pdf")) {
                texts.put(
                        name.replace(".pdf", ""),
                        PageText.all(Files.readAllBytes(file)).replaceAll("\\s+", " "));
            }
        }
        return texts;
    }
}
