// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.Agreement;

/**
 * One paper of a job as it can be looked at, printed and sent: each change order is one of its own.
 *
 * @param change number of the change order; empty for any other paper
 */
public record JobPaper(PaperKind paper, Optional<Integer> change) {

    /** A paper of which a job has one. */
    public static JobPaper of(PaperKind paper) {
        return new JobPaper(paper, Optional.empty());
    }

    /** Its file name without ending. */
    public String file() {
        return paper.file() + change.map(number -> "-" + number).orElse("");
    }

    /**
     * The papers that a job has as it stands: beside those of every job the contract once it is known how it is signed,
     * its change orders, and the completion statement once it is recorded what was built.
     */
    public static List<JobPaper> of(Bid bid) {
        Agreement agreement = bid.dossier().job().agreement();
        List<JobPaper> papers = new ArrayList<>();
        for (PaperKind paper : PaperKind.values()) {
            switch (paper) {
                case CONTRACT -> agreement.signing().ifPresent(signing -> papers.add(of(paper)));
                case COMPLETION -> agreement.finishedWork().ifPresent(built -> papers.add(of(paper)));
                case CHANGE_ORDER ->
                    agreement
                            .changes()
                            .forEach(change -> papers.add(new JobPaper(paper, Optional.of(change.number()))));
                default -> papers.add(of(paper));
            }
        }
        return papers;
    }
}
