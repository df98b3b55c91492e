// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spadework.office.MisuseStages.Stage;
import spadework.office.agreement.Issuing;
import spadework.office.agreement.LostProposal;
import spadework.office.reply.TemplateFolder;
import spadework.register.Event;
import spadework.register.Register;

/** Ways to bend a proposal on its way out: its days, its payments, what it was issued as. */
class IssueMisuseTest extends MisuseCase {
    static Stream<Misuse> misuses() {
        return Stream.of(
                new Misuse(
                        "issued on a day that has not come",
                        Stage.DRAFT,
                        site -> {
                            site.edit(job -> {
                                job.put("issued", "2027-01-04");
                                at(job, "/schedule")
                                        .put("earliestStart", "2027-02-01")
                                        .put("latestFinish", "2027-03-01");
                            });
                            return described(new Issuing(OFFICE, TODAY).issue(site.folder()));
                        },
                        "It cannot have been issued on 2027-01-04"),
                new Misuse(
                        "contract dated before the proposal",
                        Stage.DRAFT,
                        site -> {
                            site.edit(job -> at(job, "/signing").put("on", "2026-08-01"));
                            return kept(site);
                        },
                        "/signing/on: found 2026-08-01; allowed: a day not before \"issued\", 2026-08-10"),
                new Misuse(
                        "copy received before it was signed",
                        Stage.DRAFT,
                        site -> {
                            site.edit(job ->
                                    at(job, "/signing").put("on", "2026-08-20").put("received", "2026-08-19"));
                            return kept(site);
                        },
                        "/signing/received: found 2026-08-19; allowed: a day not before \"on\", 2026-08-20"),
                new Misuse(
                        "a signed job issued again",
                        Stage.SIGNED,
                        site -> described(new Issuing(OFFICE, TODAY).issue(site.folder())),
                        "The contract is signed; what changes now is a change order"),
                new Misuse(
                        "a payment on the day the machine arrives",
                        Stage.DRAFT,
                        site -> paying(site, "The day the machine arrives"),
                        "payment-before-work: Payment 2"),
                new Misuse(
                        "a deposit that hides behind a start",
                        Stage.DRAFT,
                        site -> paying(site, "The week before we begin"),
                        "deposit-over: The schedule takes"),
                new Misuse(
                        "a payment on words that name nothing",
                        Stage.DRAFT,
                        site -> paying(site, "Second payment"),
                        "payment-before-work: Payment 2"),
                new Misuse(
                        "a lost bid lost for another reason",
                        Stage.ISSUED,
                        site -> {
                            LostProposal.lose(site.folder(), LocalDate.parse("2026-08-15"), "too dear", TODAY);
                            return described(LostProposal.lose(
                                    site.folder(), LocalDate.parse("2026-08-15"), "moved away", TODAY));
                        },
                        "the reason is \"too dear\" there, and \"moved away\" was asked for"));
    }

    private static String paying(SampleJobFolder site, String when) {
        site.edit(job -> job.set("payments", SampleJobFolder.json("""
                [{"when": "You sign", "share": "10 %%", "atSigning": true}, {"when": "%s", "share": "30 %%"},
                 {"when": "The work is complete", "share": "60 %%"}]""".formatted(when))));
        return ((Bid) OFFICE.bid(site.folder()))
                .findings().stream().map(OFFICE::described).reduce("", (one, next) -> one + "\n" + next);
    }

    @Test
    void twoIssuesOfOneJobAtOnceGiveOneRevision() throws Exception {
        SampleJobFolder site = MisuseStages.at(Stage.DRAFT).copy(root.resolve("here"));
        ExecutorService both = Executors.newFixedThreadPool(2);
        Callable<Outcome> issue = () -> new Issuing(Office.with(TemplateFolder.NONE), TODAY).issue(site.folder());
        List<Future<Outcome>> outcomes = both.invokeAll(List.of(issue, issue));
        both.shutdown();
        for (Future<Outcome> outcome : outcomes) {
            assertThat(outcome.get()).isInstanceOfAny(Outcome.Issued.class, Outcome.Standing.class);
        }
        assertThat(Register.of(site.folder()).entries().stream()
                        .filter(entry -> entry.event() == Event.PROPOSAL_ISSUED))
                .hasSize(1);
    }
}
