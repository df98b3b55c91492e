// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spadework.office.MisuseStages.Stage;
import spadework.office.agreement.Issuing;
import spadework.office.records.JobRecords;
import spadework.press.PageText;
import spadework.register.Entry;
import spadework.register.Register;

/** Ways to bend a notice of cancellation, and what comes after it. */
class CancelMisuseTest extends MisuseCase {
    /**
     * Signed Thursday August 20, 2026; three business days with Saturday: until Monday 24, of OH read Monday to
     * Friday.
     */
    static Stream<Misuse> misuses() {
        return Stream.of(
                new Misuse(
                        "a notice on a day that has not come",
                        Stage.SIGNED,
                        site -> described(cancel(site, "2026-11-21", Optional.of("2026-08-24"), IDA)),
                        "today is 2026-11-20"),
                new Misuse(
                        "a notice before the contract was signed",
                        Stage.SIGNED,
                        site -> described(cancel(site, "2026-08-19", Optional.empty(), IDA)),
                        "signed on 2026-08-20"),
                new Misuse(
                        "a notice where nothing is signed",
                        Stage.ISSUED,
                        site -> described(cancel(site, "2026-08-21", Optional.empty(), IDA)),
                        "No contract is signed, so there is none to cancel"),
                new Misuse(
                        "a notice that was sent too late",
                        Stage.SIGNED,
                        site -> described(cancel(site, "2026-08-26", Optional.empty(), IDA)),
                        "the right to cancel ended at midnight of 2026-08-25"),
                new Misuse(
                        "a notice by a stranger",
                        Stage.SIGNED,
                        site -> described(cancel(site, "2026-08-21", Optional.empty(), "Uncle Osric")),
                        "Uncle Osric is no buyer"),
                new Misuse(
                        "a notice that came before it was sent",
                        Stage.SIGNED,
                        site -> described(cancel(site, "2026-08-21", Optional.of("2026-08-22"), IDA)),
                        "The notice was sent on 2026-08-22, after it came on 2026-08-21"),
                new Misuse(
                        "a notice on a closed job",
                        Stage.CLOSED,
                        site -> described(cancel(site, "2026-10-05", Optional.of("2026-08-21"), IDA)),
                        "The job is closed and its warranty issued"));
    }

    /**
     * A buyer cancels by mail on the last day: ten business days after the notice came, in which Labor Day does not
     * count
     * (16 CFR 429.1(g), 429.0(f)). Nothing follows on the contract.
     */
    @Test
    void aNoticeStopsTheJobAndSaysByWhenThePaymentGoesBack() throws IOException {
        SampleJobFolder site = MisuseStages.at(Stage.SIGNED).copy(root.resolve("here"));
        site.edit(job -> job.set(
                "received",
                SampleJobFolder.json("[{\"on\": \"2026-08-20\", \"amount\": \"$2,550.00\", \"how\": \"check 7\"}]")));
        Outcome outcome = cancel(site, "2026-08-27", Optional.of("2026-08-25"), TOBIAS);
        done(outcome);
        Entry entry = JobRecords.beside(site.file()).canceled().orElseThrow();
        assertThat(entry.fact("refundBy")).contains("2026-09-09");
        assertThat(entry.fact("refund")).contains("2550.00");
        byte[] paper = Files.readAllBytes(site.folder().resolve("for-the-homeowner/2026-014-X1-cancellation.pdf"));
        assertThat(PageText.all(paper).replaceAll("\\s+", " "))
                .contains("Your contract is canceled", "$2,550.00", "September 9, 2026", "check 7");
        assertThat(site.folder().resolve("for-the-homeowner/2026-014-X1-cancellation.xlsx"))
                .isNotEmptyFile();
        assertThat(kept(site)).contains("contract-canceled");
        site.addChange(1);
        assertThat(described(decide(site, 1, true, SampleJobFolder.on("2026-09-13"))))
                .contains("The contract was canceled");
        assertThat(described(close(site, "2026-10-01", WORK_ENDED, Optional.empty())))
                .contains("The contract was canceled");
        assertThat(described(new Issuing(OFFICE, TODAY).issue(site.folder()))).contains("The contract was canceled");
        assertThat(described(accept(site, SampleJobFolder.yes(), "OP1")))
                .as("the same yes again does not bring it back")
                .contains("The contract was canceled")
                .doesNotContain("DONE");
        assertThat(described(cancel(site, "2026-08-28", Optional.of("2026-08-25"), TOBIAS)))
                .contains("the day it came is \"2026-08-27\" there, and \"2026-08-28\" was asked for");
        assertThat(Register.of(site.folder()).check().faults()).isEmpty();
    }
}
