// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import spadework.intake.source.FileText;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Refusal;
import spadework.office.reply.TemplateFolder;

/** Whatever a job's file says, it is priced or refused with faults. */
class JobFuzzTest {
    private static final Path FILE = Path.of("sample-quotes", "block-basement-to-swale", "job.json");
    private static final Office OFFICE = Office.with(TemplateFolder.NONE);

    @FuzzTest
    void jobIsPricedOrRefused(byte[] file) {
        FileText text = FileText.decoded(file, "job.json");
        if (text.fault().isPresent()) {
            ReadableMessage.hold(text.fault().get());
            return;
        }
        BidResult answer = OFFICE.bid(text.text(), FILE);
        if (answer instanceof Refusal refusal) {
            ReadableMessage.hold(refusal.faults());
        } else {
            ((Bid) answer).findings().forEach(finding -> ReadableMessage.hold(OFFICE.what(finding)));
        }
    }
}
