// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.office.records.JobRecords;
import spadework.register.Entry;

/** The papers of a signed job that were issued or signed: they are handed out as they were, byte for byte. */
public final class IssuedPapers {
    private static final List<String> ENDINGS = List.of(".pdf", ".xlsx", HomeownerPapers.READING + ".pdf");

    private final JobRecords records;

    IssuedPapers(JobRecords records) {
        this.records = records;
    }

    /** The kept files of those papers by the names under which papers are printed; none while nothing is signed. */
    Map<String, byte[]> of(Bid bid, Set<PaperKind> papers) throws IOException {
        Map<String, byte[]> kept = new LinkedHashMap<>();
        Optional<Entry> contract = records.contract();
        if (contract.isEmpty() || bid.dossier().job().agreement().accepted().isEmpty()) {
            return kept;
        }
        int revision = bid.dossier().job().agreement().accepted().get().revision();
        if (papers.contains(PaperKind.PROPOSAL)) {
            Optional<Entry> proposal = records.proposal(revision);
            if (proposal.isPresent()) {
                keep(proposal.get(), PaperKind.PROPOSAL, kept);
            }
        }
        if (papers.contains(PaperKind.CONTRACT)) {
            keep(contract.get(), PaperKind.CONTRACT, kept);
        }
        return kept;
    }

    private void keep(Entry entry, PaperKind paper, Map<String, byte[]> kept) throws IOException {
        for (String ending : ENDINGS) {
            records.file(entry, "-" + paper.file() + ending).ifPresent(bytes -> kept.put(paper.file() + ending, bytes));
        }
    }
}
