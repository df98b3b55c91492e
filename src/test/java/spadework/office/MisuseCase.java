// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.finding.Fault;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Canceling;
import spadework.office.agreement.Closing;
import spadework.office.agreement.Deciding;
import spadework.office.agreement.SignatureInput;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Register;

/**
 * Every way to bend an agreement that we know of, each refused with a message that says how to fix it, and nothing
 * agreed. Each class of misuses names its own; law is named in the messages, and that both owners sign is common
 * practice, no source.
 */
abstract class MisuseCase {
    static final LocalDate TODAY = SampleJobFolder.TODAY;
    static final Office OFFICE = MisuseStages.OFFICE;
    static final Optional<LocalDate> WORK_ENDED = Optional.empty();
    static final String IDA = "Ida Wrenfield";
    static final String TOBIAS = "Tobias Wrenfield";

    private static final Set<Event> BEFORE_THE_YES = EnumSet.of(
            Event.NUMBER_TAKEN, Event.PROPOSAL_ISSUED, Event.PROPOSAL_DECLINED, Event.SIGNATURE_RECEIVED, Event.CLAIM);

    @TempDir
    Path root;

    /** What is tried, and what it is answered. */
    record Misuse(String name, MisuseStages.Stage at, Attempt attempt, String answer) {
        @Override
        public String toString() {
            return name;
        }
    }

    /** One attempt; it gives all that was answered. */
    @FunctionalInterface
    interface Attempt {
        String on(SampleJobFolder site) throws IOException;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("misuses")
    void isRefusedWithItsMessage(Misuse misuse) throws IOException {
        SampleJobFolder site = MisuseStages.at(misuse.at()).copy(root.resolve("here"));
        String answer = misuse.attempt().on(site);
        assertThat(answer).contains(misuse.answer()).doesNotContain("DONE");
        leavesTheRecordSound(site);
        assertThat(agreed(site)).as("nothing was agreed").isSubsetOf(agreed(MisuseStages.at(misuse.at())));
    }

    /** What a misuse took away is missed, and nothing else. */
    void leavesTheRecordSound(SampleJobFolder site) throws IOException {
        assertThat(Register.of(site.folder()).check().faults())
                .allMatch(fault -> fault.found().equals("no such file"));
    }

    /** What both sides agreed to, by the register. */
    private static List<String> agreed(SampleJobFolder site) throws IOException {
        return Register.of(site.folder()).entries().stream()
                .filter(entry -> !BEFORE_THE_YES.contains(entry.event()))
                .map(Entry::toString)
                .toList();
    }

    static void done(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Issued.class);
    }

    static Outcome accept(SampleJobFolder site, SignatureInput yes, String... taken) throws IOException {
        return new Accepting(OFFICE, TODAY).accept(site.folder(), List.of(taken), yes);
    }

    static Outcome decide(SampleJobFolder site, int number, boolean accepted, SignatureInput yes) throws IOException {
        return new Deciding(OFFICE, TODAY).decide(site.folder(), number, accepted, yes);
    }

    static Outcome close(SampleJobFolder site, String on, Optional<LocalDate> completed, Optional<String> waived)
            throws IOException {
        return new Closing(OFFICE, TODAY)
                .close(site.folder(), new Closing.Asked(LocalDate.parse(on), completed, waived));
    }

    static Outcome cancel(SampleJobFolder site, String received, Optional<String> sent, String... by)
            throws IOException {
        return new Canceling(OFFICE, TODAY)
                .cancel(
                        site.folder(),
                        new Canceling.NoticeInput(
                                List.of(by),
                                sent.map(LocalDate::parse),
                                LocalDate.parse(received),
                                Optional.empty(),
                                Optional.empty()));
    }

    /** What a refused step says; a step that was taken says that it was, which no misuse expects. */
    static String described(Outcome outcome) {
        OutcomeText text = OutcomeText.of(outcome, "nothing was done", "in acceptedStops");
        return (text.done() ? "DONE " : "") + text.head() + "\n" + String.join("\n", text.lines());
    }

    /** What keeps a job from its papers: faults of the file, or stops. */
    static String kept(SampleJobFolder site) {
        BidResult answer = OFFICE.bid(site.folder());
        return answer instanceof Refusal refusal
                ? String.join("\n", refusal.faults().stream().map(Fault::text).toList())
                : String.join(
                        "\n",
                        ((Bid) answer)
                                .openStops().stream().map(OFFICE::described).toList());
    }

    static ObjectNode at(ObjectNode job, String pointer) {
        return (ObjectNode) job.at(pointer);
    }
}
