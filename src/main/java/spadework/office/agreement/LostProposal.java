// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import spadework.intake.Intake;
import spadework.office.Outcome;
import spadework.office.records.JobRecords;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Register;
import spadework.wording.Wording;

/** Writes down that the homeowner did not take a proposal. A later issue takes the bid up again. */
public final class LostProposal {
    private static final Wording WORDS = Wording.beside(LostProposal.class);

    private LostProposal() {}

    /**
     * Registers that a bid is lost.
     *
     * @param reason why, for the contractor's eyes
     * @param today the day on which it is written down; nothing can have been declined later
     * @throws IOException if the register cannot be written
     */
    public static Outcome lose(Path job, LocalDate on, String reason, LocalDate today) throws IOException {
        JobRecords records = JobRecords.beside(Intake.fileOf(job));
        if (records.contract().isPresent()) {
            return new Outcome.Refused(List.of(WORDS.get("losing.contract-signed-no-longer")));
        }
        if (records.proposal().isEmpty()) {
            return new Outcome.Refused(List.of(WORDS.get("losing.no-proposal-issued-there")));
        }
        Entry proposal = records.proposal().get();
        String number = proposal.number().orElseThrow().text();
        if (records.isLost()) {
            Entry declined = records.declined().orElseThrow();
            return new RepeatedStep(number)
                    .fact("the day", declined.on().toString(), on.toString())
                    .fact("the reason", declined.fact("reason").orElse(""), reason)
                    .refusal()
                    .orElse(new Outcome.Standing(number));
        }
        List<String> future = Signatures.future(on, today, "declined");
        if (!future.isEmpty()) {
            return new Outcome.Refused(future);
        }
        if (on.isBefore(proposal.on())) {
            return new Outcome.Refused(List.of(number + " was issued on " + proposal.on() + ", after " + on + "."));
        }
        Register.of(records.folder())
                .append(on, Event.PROPOSAL_DECLINED, proposal.number().get(), Map.of("reason", reason));
        return new Outcome.Issued(number, List.of());
    }
}
