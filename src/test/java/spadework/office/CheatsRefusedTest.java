// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.finding.Fault;
import spadework.money.Dollars;
import spadework.office.aftercare.ClaimInput;
import spadework.office.aftercare.Claims;
import spadework.office.aftercare.TransferInput;
import spadework.office.aftercare.Transfers;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Canceling;
import spadework.office.agreement.Closing;
import spadework.office.agreement.ConsentInput;
import spadework.office.agreement.Deciding;
import spadework.office.agreement.Issuing;
import spadework.office.agreement.Losing;
import spadework.office.agreement.SignatureInput;
import spadework.office.records.JobRecords;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;
import spadework.press.PageText;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Register;

/**
 * Every way to bend an agreement that we know of, each refused with a message that says how to fix it, and nothing
 * written. Law is named in the messages; that both owners sign is common practice, no source.
 */
class CheatsRefusedTest {
    private static final LocalDate TODAY = Jobsite.TODAY;
    private static final Office OFFICE = Office.with(TemplateFolder.NONE);
    private static final Set<Event> BEFORE_THE_YES = EnumSet.of(
            Event.NUMBER_TAKEN, Event.PROPOSAL_ISSUED, Event.PROPOSAL_DECLINED, Event.SIGNATURE_RECEIVED, Event.CLAIM);
    private static final Optional<LocalDate> WORK_ENDED = Optional.empty();

    @TempDir
    static Path prepared;

    private static final Map<Stage, Jobsite> SITES = new EnumMap<>(Stage.class);

    @TempDir
    Path root;

    /** How far a job has come; each is made once and copied. */
    enum Stage {
        DRAFT,
        ISSUED,
        SIGNED,
        CHANGED,
        BUILT,
        CLOSED
    }

    /** What is tried, and what it is answered. */
    record Cheat(String name, Stage at, Attempt attempt, String answer) {
        @Override
        public String toString() {
            return name;
        }
    }

    /** One attempt; it gives all that was answered. */
    @FunctionalInterface
    interface Attempt {
        String on(Jobsite site) throws IOException;
    }

    @BeforeAll
    static void prepare() throws IOException {
        Jobsite site = Jobsite.in(Files.createDirectory(prepared.resolve("job")));
        SITES.put(Stage.DRAFT, site.copy(prepared.resolve("draft")));
        done(new Issuing(OFFICE, TODAY).issue(site.folder()));
        SITES.put(Stage.ISSUED, site.copy(prepared.resolve("issued")));
        done(new Accepting(OFFICE, TODAY).accept(site.folder(), List.of("OP1"), Jobsite.yes()));
        SITES.put(Stage.SIGNED, site.copy(prepared.resolve("signed")));
        site.addChange(1);
        site.addChange(2);
        done(decide(site, 1, true, Jobsite.on("2026-09-13")));
        SITES.put(Stage.CHANGED, site.copy(prepared.resolve("changed")));
        done(decide(site, 2, false, SignatureInput.none(LocalDate.parse("2026-09-14"))));
        Dollars total = ((Bid) OFFICE.bid(site.folder())).dossier().contract().total();
        site.finish(List.of("A", "B", "C", "W1"), total.text());
        SITES.put(Stage.BUILT, site.copy(prepared.resolve("built")));
        done(close(site, "2026-10-01", WORK_ENDED, Optional.empty()));
        SITES.put(Stage.CLOSED, site.copy(prepared.resolve("closed")));
    }

    private static void done(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Issued.class);
    }

    private static Outcome accept(Jobsite site, SignatureInput yes, String... taken) throws IOException {
        return new Accepting(OFFICE, TODAY).accept(site.folder(), List.of(taken), yes);
    }

    private static Outcome decide(Jobsite site, int number, boolean accepted, SignatureInput yes) throws IOException {
        return new Deciding(OFFICE, TODAY).decide(site.folder(), number, accepted, yes);
    }

    private static Outcome close(Jobsite site, String on, Optional<LocalDate> completed, Optional<String> waived)
            throws IOException {
        return new Closing(OFFICE, TODAY)
                .close(site.folder(), new Closing.Asked(LocalDate.parse(on), completed, waived));
    }

    /** What a refused step says; a step that was taken says that it was, which no cheat expects. */
    private static String told(Outcome outcome) {
        OutcomeText text = OutcomeText.of(outcome, "nothing was done", "in acceptedStops");
        return (text.done() ? "DONE " : "") + text.head() + "\n" + String.join("\n", text.lines());
    }

    /** What keeps a job from its papers: faults of the file, or stops. */
    private static String kept(Jobsite site) {
        BidResult answer = OFFICE.bid(site.folder());
        return answer instanceof Refusal refusal
                ? String.join("\n", refusal.faults().stream().map(Fault::text).toList())
                : String.join(
                        "\n",
                        ((Bid) answer).openStops().stream().map(OFFICE::told).toList());
    }

    private static ObjectNode at(ObjectNode job, String pointer) {
        return (ObjectNode) job.at(pointer);
    }

    private static SignatureInput typed(String on, String by, String typed, ConsentInput consent) {
        return new SignatureInput(LocalDate.parse(on), List.of(by), Optional.empty(), Optional.of(typed), consent);
    }

    private static ConsentInput consent(String disclosed, String given) {
        return new ConsentInput(
                Optional.of(LocalDate.parse(given)),
                Optional.of(LocalDate.parse(disclosed)),
                Optional.of("ask us, no cost"),
                Optional.of("write to us"),
                Optional.of("a PDF reader"),
                Optional.of("opened it and answered"));
    }

    private static final String IDA = "Ida Wrenfield";
    private static final String TOBIAS = "Tobias Wrenfield";

    static Stream<Cheat> cheats() {
        List<Cheat> all = new ArrayList<>();
        all.addAll(days());
        all.addAll(people());
        all.addAll(promises());
        all.addAll(seals());
        all.addAll(repeats());
        all.addAll(drafts());
        all.addAll(claims());
        all.addAll(closings());
        all.addAll(cancellations());
        all.addAll(payments());
        return all.stream();
    }

    private static List<Cheat> days() {
        return List.of(
                new Cheat(
                        "signed on another day than the contract is dated",
                        Stage.ISSUED,
                        site -> {
                            site.edit(job -> at(job, "/signing").put("on", "2026-08-19"));
                            return told(accept(site, Jobsite.on("2026-08-20")));
                        },
                        "The contract is dated 2026-08-19, and with it the last day to cancel; it was signed "
                                + "on 2026-08-20"),
                new Cheat(
                        "signed before the paper was there",
                        Stage.ISSUED,
                        site -> told(accept(site, Jobsite.on("2026-08-09"))),
                        "2026-014-P1 was issued on 2026-08-10, after 2026-08-09"),
                new Cheat(
                        "signed on a day that has not come",
                        Stage.ISSUED,
                        site -> told(accept(site, Jobsite.on("2027-01-04"))),
                        "It cannot have been signed on 2027-01-04: today is 2026-11-20"),
                new Cheat(
                        "signed after the price ran out",
                        Stage.ISSUED,
                        site -> told(accept(site, Jobsite.on("2026-09-10"))),
                        "The price held until 2026-09-09"),
                new Cheat(
                        "issued on a day that has not come",
                        Stage.DRAFT,
                        site -> {
                            site.edit(job -> {
                                job.put("issued", "2027-01-04");
                                at(job, "/schedule")
                                        .put("earliestStart", "2027-02-01")
                                        .put("latestFinish", "2027-03-01");
                            });
                            return told(new Issuing(OFFICE, TODAY).issue(site.folder()));
                        },
                        "It cannot have been issued on 2027-01-04"),
                new Cheat(
                        "another day of signing written into the file",
                        Stage.SIGNED,
                        site -> {
                            site.edit(job -> at(job, "/signing").put("on", "2026-08-18"));
                            return kept(site);
                        },
                        "/signing/on: found 2026-08-18; allowed: the day of \"accepted\", 2026-08-20"),
                new Cheat(
                        "contract dated before the proposal",
                        Stage.DRAFT,
                        site -> {
                            site.edit(job -> at(job, "/signing").put("on", "2026-08-01"));
                            return kept(site);
                        },
                        "/signing/on: found 2026-08-01; allowed: a day not before \"issued\", 2026-08-10"),
                new Cheat(
                        "copy received before it was signed",
                        Stage.DRAFT,
                        site -> {
                            site.edit(job ->
                                    at(job, "/signing").put("on", "2026-08-20").put("received", "2026-08-19"));
                            return kept(site);
                        },
                        "/signing/received: found 2026-08-19; allowed: a day not before \"on\", 2026-08-20"),
                new Cheat(
                        "work before the contract was signed",
                        Stage.BUILT,
                        site -> {
                            site.edit(job -> at(job, "/asBuilt").put("started", "2026-08-19"));
                            return kept(site);
                        },
                        "/asBuilt/started: found 2026-08-19; allowed: a day not before \"on\", 2026-08-20"),
                new Cheat(
                        "work while the buyer could cancel",
                        Stage.BUILT,
                        site -> {
                            site.edit(job -> at(job, "/asBuilt").put("started", "2026-08-24"));
                            return kept(site);
                        },
                        "start-inside-cancellation: The work starts on August 24, 2026. The buyer may cancel "
                                + "until midnight"
                                + " of August 25, 2026"),
                new Cheat(
                        "an emergency that nobody wrote down by hand",
                        Stage.ISSUED,
                        site -> {
                            site.edit(job -> at(job, "/signing").put("emergency", true));
                            return told(accept(site, Jobsite.on("2026-09-09")));
                        },
                        "Only an emergency for which the buyer called, with a statement in the buyer's own hand"),
                new Cheat(
                        "a flow test before the work began",
                        Stage.BUILT,
                        site -> {
                            site.edit(job -> at(job, "/asBuilt/flowTests/0").put("on", "2026-09-07"));
                            return kept(site);
                        },
                        "/asBuilt/flowTests/0/on: found 2026-09-07; allowed: a day not before \"started\", 2026-09-08"),
                new Cheat(
                        "closed before the work ended",
                        Stage.BUILT,
                        site -> told(close(site, "2026-09-24", WORK_ENDED, Optional.empty())),
                        "The work ended on 2026-09-25, after 2026-09-24"),
                new Cheat(
                        "closed on a day that has not come",
                        Stage.BUILT,
                        site -> told(close(site, "2026-12-24", WORK_ENDED, Optional.empty())),
                        "It cannot have been closed on 2026-12-24"),
                new Cheat(
                        "a warranty that runs from after the close",
                        Stage.BUILT,
                        site -> told(close(
                                site, "2026-10-01", Optional.of(LocalDate.parse("2026-10-05")), Optional.empty())),
                        "The warranty cannot run from 2026-10-05, a day after the close of 2026-10-01"),
                new Cheat(
                        "a warranty that runs from before the work ended",
                        Stage.BUILT,
                        site -> told(close(
                                site, "2026-10-01", Optional.of(LocalDate.parse("2026-09-20")), Optional.empty())),
                        "before the work ended on 2026-09-25"),
                new Cheat(
                        "a change order signed before it was there",
                        Stage.CHANGED,
                        site -> told(decide(site, 2, true, Jobsite.on("2026-09-11"))),
                        "Change order 2 was issued on 2026-09-12, after 2026-09-11"),
                new Cheat(
                        "a change order declined tomorrow",
                        Stage.CHANGED,
                        site -> told(decide(site, 2, false, SignatureInput.none(LocalDate.parse("2026-11-21")))),
                        "It cannot have been declined on 2026-11-21"));
    }

    private static List<Cheat> people() {
        ConsentInput whole = consent("2026-08-20", "2026-08-20");
        ConsentInput half = new ConsentInput(
                whole.given(), Optional.empty(), whole.paper(), Optional.empty(), Optional.empty(), Optional.empty());
        return List.of(
                new Cheat(
                        "a stranger signs",
                        Stage.ISSUED,
                        site -> told(accept(site, Jobsite.by("2026-08-20", IDA, "Uncle Osric"))),
                        "Uncle Osric is not named on the job as owner"),
                new Cheat(
                        "a stranger signs a change order",
                        Stage.CHANGED,
                        site -> told(decide(site, 2, true, Jobsite.by("2026-09-13", "Uncle Osric"))),
                        "It is signed by Ida Wrenfield, Tobias Wrenfield. Correct the name, or write \"signing\","
                                + " \"signers\""),
                new Cheat(
                        "nobody signs",
                        Stage.ISSUED,
                        site -> told(accept(site, Jobsite.by("2026-08-20"))),
                        "Nobody is named who signed"),
                new Cheat(
                        "one types for two",
                        Stage.ISSUED,
                        site -> told(accept(
                                site,
                                new SignatureInput(
                                        Jobsite.SIGNED,
                                        List.of(IDA, TOBIAS),
                                        Optional.empty(),
                                        Optional.of(IDA),
                                        whole))),
                        "A typed name signs for one person, and 2 are named"),
                new Cheat(
                        "another name is typed",
                        Stage.ISSUED,
                        site -> told(accept(site, typed("2026-08-20", IDA, TOBIAS, whole))),
                        "The name as typed is \"Tobias Wrenfield\", and Ida Wrenfield is said to have signed"),
                new Cheat(
                        "a typed name with half a consent",
                        Stage.ISSUED,
                        site -> told(accept(site, typed("2026-08-20", IDA, IDA, half))),
                        "wanting here: the day on which the statement was shown (--disclosed DATE); how to withdraw"
                                + " and what follows (--withdrawal TEXT); the hardware and software that it takes"),
                new Cheat(
                        "a consent before the statement was shown",
                        Stage.ISSUED,
                        site -> told(accept(site, typed("2026-08-20", IDA, IDA, consent("2026-08-20", "2026-08-19")))),
                        "The statement was shown on 2026-08-20, after the consent of 2026-08-19"),
                new Cheat(
                        "a consent after the signature",
                        Stage.ISSUED,
                        site -> told(accept(site, typed("2026-08-20", IDA, IDA, consent("2026-08-21", "2026-08-21")))),
                        "The consent was given on 2026-08-21, after the signature of 2026-08-20"),
                new Cheat(
                        "the same owner signs twice",
                        Stage.ISSUED,
                        site -> {
                            accept(site, Jobsite.by("2026-08-20", IDA));
                            return told(accept(site, Jobsite.by("2026-08-20", IDA)));
                        },
                        "Ida Wrenfield signed 2026-014-P1 already, on 2026-08-20"),
                new Cheat(
                        "two owners sign on two days",
                        Stage.ISSUED,
                        site -> {
                            accept(site, Jobsite.by("2026-08-20", IDA));
                            return told(accept(site, Jobsite.by("2026-08-21", TOBIAS)));
                        },
                        "One day stands on the paper"),
                new Cheat(
                        "two owners sign two things",
                        Stage.ISSUED,
                        site -> {
                            accept(site, Jobsite.by("2026-08-20", IDA), "OP1");
                            return told(accept(site, Jobsite.by("2026-08-20", TOBIAS), "OP2"));
                        },
                        "Ida Wrenfield signed with OP1, and this signature is with OP2. All sign the same"),
                new Cheat(
                        "a new owner after the yes",
                        Stage.SIGNED,
                        site -> {
                            site.edit(job -> ((ArrayNode) job.at("/customer/names")).remove(1));
                            return kept(site);
                        },
                        "job-moved"),
                new Cheat(
                        "a signed paper that is not there",
                        Stage.ISSUED,
                        site -> told(accept(
                                site,
                                new SignatureInput(
                                        Jobsite.SIGNED,
                                        List.of(IDA, TOBIAS),
                                        Optional.of("lost.pdf"),
                                        Optional.empty(),
                                        ConsentInput.NONE))),
                        "lost.pdf; put the signed paper into the job's folder"));
    }

    private static List<Cheat> promises() {
        return List.of(
                new Cheat(
                        "another job is accepted than was issued",
                        Stage.ISSUED,
                        site -> {
                            site.edit(job -> at(job, "/walls/0").put("length", "41 ft"));
                            return told(accept(site, Jobsite.yes()));
                        },
                        "The job changed since 2026-014-P1: walls/0/length: \"42 ft\" → \"41 ft\". Put it "
                                + "back, or issue"
                                + " it again"),
                new Cheat(
                        "a proposal that was declined is accepted",
                        Stage.ISSUED,
                        site -> {
                            Losing.lose(site.folder(), LocalDate.parse("2026-08-15"), "too dear", TODAY);
                            return told(accept(site, Jobsite.yes()));
                        },
                        "The homeowner declined it, as the register has it"),
                new Cheat(
                        "the source of the proposal is taken away",
                        Stage.ISSUED,
                        site -> {
                            Files.delete(site.folder().resolve("kept/2026-014-P1-source.zip"));
                            return told(accept(site, Jobsite.yes()));
                        },
                        "The source of 2026-014-P1 is not in the folder \"kept\" any more"),
                new Cheat(
                        "an option that was not offered",
                        Stage.ISSUED,
                        site -> told(accept(site, Jobsite.yes(), "OP9")),
                        "There is no option OP9; there is OP1, OP2"));
    }

    private static List<Cheat> seals() {
        return List.of(
                new Cheat(
                        "the signed price raised in the file",
                        Stage.SIGNED,
                        site -> {
                            site.edit(job -> at(job, "/accepted").put("price", "$99,000.00"));
                            return kept(site);
                        },
                        "sealed-price: The job file says that the contract was signed at $99,000.00. The "
                                + "register has $"),
                new Cheat(
                        "the price of a change order raised in the file",
                        Stage.CHANGED,
                        site -> {
                            site.edit(job -> at(job, "/changes/0/decision").put("price", "$9,999.00"));
                            return kept(site);
                        },
                        "sealed-change: The job file says that change order 1 was signed at $9,999.00. The "
                                + "register has $"),
                new Cheat(
                        "a change order accepted in the file alone",
                        Stage.CHANGED,
                        site -> {
                            site.edit(job -> {
                                ObjectNode second = at(job, "/changes/1");
                                second.put("state", "accepted");
                                second.set("decision", job.at("/changes/0/decision"));
                            });
                            return kept(site);
                        },
                        "change-unregistered: The job file says that change order 2 is accepted"),
                new Cheat(
                        "the buyer made younger after the yes",
                        Stage.SIGNED,
                        site -> {
                            site.edit(job -> at(job, "/signing").put("oldestAge", 40));
                            return kept(site);
                        },
                        "signing-moved: The job file says otherwise how the contract was signed"),
                new Cheat(
                        "a wall made shorter after the yes",
                        Stage.SIGNED,
                        site -> {
                            site.edit(job -> at(job, "/walls/0").put("length", "12 ft"));
                            return kept(site);
                        },
                        "job-moved"));
    }

    private static List<Cheat> repeats() {
        return List.of(
                new Cheat(
                        "the yes once more on another day",
                        Stage.SIGNED,
                        site -> told(accept(site, Jobsite.on("2026-08-21"), "OP1")),
                        "2026-014-A1 is registered already, with other facts: the day of signing is \"2026-08-20\""
                                + " there, and \"2026-08-21\" was asked for"),
                new Cheat(
                        "the yes once more with other options",
                        Stage.SIGNED,
                        site -> told(accept(site, Jobsite.yes(), "OP1", "OP2")),
                        "the options taken is \"OP1\" there, and \"OP1, OP2\" was asked for"),
                new Cheat(
                        "the yes once more by another",
                        Stage.SIGNED,
                        site -> told(accept(site, Jobsite.by("2026-08-20", "Uncle Osric"), "OP1")),
                        "who signed is \"Ida Wrenfield; Tobias Wrenfield\" there, and \"Uncle Osric\" was asked for"),
                new Cheat(
                        "an accepted change order declined",
                        Stage.CHANGED,
                        site -> told(decide(site, 1, false, SignatureInput.none(LocalDate.parse("2026-09-13")))),
                        "what was decided is \"accepted\" there, and \"declined\" was asked for"),
                new Cheat(
                        "a declined change order accepted",
                        Stage.BUILT,
                        site -> told(decide(site, 2, true, Jobsite.on("2026-09-14"))),
                        "what was decided is \"declined\" there, and \"accepted\" was asked for"),
                new Cheat(
                        "the close once more on another day",
                        Stage.CLOSED,
                        site -> told(close(site, "2026-10-02", WORK_ENDED, Optional.empty())),
                        "the day of the close is \"2026-10-01\" there, and \"2026-10-02\" was asked for"),
                new Cheat(
                        "the close once more with a waiver",
                        Stage.CLOSED,
                        site -> told(close(site, "2026-10-01", WORK_ENDED, Optional.of("a friend"))),
                        "why a balance is waived is nothing there, and \"a friend\" was asked for"),
                new Cheat(
                        "a lost bid lost for another reason",
                        Stage.ISSUED,
                        site -> {
                            Losing.lose(site.folder(), LocalDate.parse("2026-08-15"), "too dear", TODAY);
                            return told(Losing.lose(site.folder(), LocalDate.parse("2026-08-15"), "moved away", TODAY));
                        },
                        "the reason is \"too dear\" there, and \"moved away\" was asked for"),
                new Cheat(
                        "a signed job issued again",
                        Stage.SIGNED,
                        site -> told(new Issuing(OFFICE, TODAY).issue(site.folder())),
                        "The contract is signed; what changes now is a change order"));
    }

    private static List<Cheat> drafts() {
        return List.of(
                new Cheat(
                        "a yes where no contract is prepared",
                        Stage.DRAFT,
                        site -> {
                            site.edit(job -> job.remove("signing"));
                            new Issuing(OFFICE, TODAY).issue(site.folder());
                            return told(accept(site, Jobsite.yes()));
                        },
                        "No contract is prepared, so there was none to sign"),
                new Cheat(
                        "a draft is signed: rules known from memory",
                        Stage.DRAFT,
                        site -> {
                            Files.delete(site.folder().resolve("state-rules.json"));
                            new Issuing(Office.with(TemplateFolder.NONE), TODAY).issue(site.folder());
                            return told(accept(site, Jobsite.yes()));
                        },
                        "rules-from-memory: What is known of the law of OH rests in part on memory"),
                new Cheat(
                        "a draft is signed: a notice without its words",
                        Stage.DRAFT,
                        site -> {
                            Files.delete(site.folder().resolve("state-rules.json"));
                            new Issuing(Office.with(TemplateFolder.NONE), TODAY).issue(site.folder());
                            return told(accept(site, Jobsite.yes()));
                        },
                        "notice-unworded: OH wants a notice in the contract, excess cost notice"));
    }

    private static String told(Reply reply) {
        return (reply.done() ? "DONE " : "") + String.join("\n", reply.out()) + String.join("\n", reply.err());
    }

    private static String claim(Jobsite site, String on, Optional<String> since) throws IOException {
        return told(Claims.open(
                site.folder(),
                input(on, Optional.of("water"), since, Optional.empty(), Optional.empty(), Optional.empty()),
                LATER));
    }

    private static ClaimInput input(
            String on,
            Optional<String> seen,
            Optional<String> since,
            Optional<String> inspected,
            Optional<String> clause,
            Optional<String> cause) {
        return new ClaimInput(
                LocalDate.parse(on),
                seen,
                since.map(LocalDate::parse),
                Optional.empty(),
                inspected.map(LocalDate::parse),
                clause.map(text -> "no"),
                clause,
                cause,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static final LocalDate LATER = LocalDate.of(2040, 1, 1);
    private static final String DUTY = "Every fall, clean the gutters and the leaf catch at each downspout.";

    private static String denied(Jobsite site, Optional<String> inspected, Optional<String> cause) throws IOException {
        claim(site, "2027-03-01", Optional.empty());
        return told(Claims.add(
                site.folder(),
                "2026-014-CL1",
                input("2027-03-04", Optional.empty(), Optional.empty(), inspected, Optional.of(DUTY), cause),
                LATER));
    }

    private static String passed(Jobsite site, Optional<LocalDate> sold, String to) throws IOException {
        return told(Transfers.transfer(
                site.folder(),
                new TransferInput(
                        Optional.empty(),
                        List.of(to),
                        LocalDate.parse("2029-06-04"),
                        sold,
                        Optional.empty(),
                        Optional.empty()),
                TemplateFolder.NONE,
                LATER));
    }

    private static List<Cheat> claims() {
        return List.of(
                new Cheat(
                        "a claim before cover",
                        Stage.CLOSED,
                        site -> claim(site, "2026-09-24", Optional.empty()),
                        "2026-09-24, before the warranty begins; allowed: 2026-09-25 or later"),
                new Cheat(
                        "a claim after cover",
                        Stage.CLOSED,
                        site -> claim(site, "2036-09-25", Optional.empty()),
                        "2036-09-25, after the last part ended; allowed: 2036-09-24 or earlier"),
                new Cheat(
                        "a claim on a day that has not come",
                        Stage.CLOSED,
                        site -> claim(site, "2040-01-02", Optional.empty()),
                        "2040-01-02, a day that has not come"),
                new Cheat(
                        "a look before the claim",
                        Stage.CLOSED,
                        site -> denied(site, Optional.of("2027-02-27"), Optional.of("it did")),
                        "2027-02-27, before the claim was made"),
                new Cheat(
                        "a missed duty alone denies",
                        Stage.CLOSED,
                        site -> denied(site, Optional.of("2027-03-04"), Optional.empty()),
                        "--cause: found a missed duty alone"),
                new Cheat(
                        "a transfer without the day of the sale",
                        Stage.CLOSED,
                        site -> passed(site, Optional.empty(), "Anselm Wren"),
                        "--sold: found no day of the sale"),
                new Cheat(
                        "a transfer too late",
                        Stage.CLOSED,
                        site -> passed(site, Optional.of(LocalDate.parse("2029-01-04")), "Anselm Wren"),
                        "151 days after the sale"));
    }

    private static String closing(Jobsite site, Consumer<ObjectNode> change) throws IOException {
        site.edit(change);
        return told(close(site, "2026-10-01", WORK_ENDED, Optional.empty()));
    }

    private static List<Cheat> closings() {
        return List.of(
                new Cheat(
                        "a line without its flow test",
                        Stage.BUILT,
                        site -> closing(site, job -> ((ArrayNode) job.at("/asBuilt/flowTests")).remove(1)),
                        "close-line-not-tested: No flow test of line R1 is recorded. The proposal promises one"),
                new Cheat(
                        "a flow test that failed",
                        Stage.BUILT,
                        site -> closing(
                                site, job -> at(job, "/asBuilt/flowTests/1").put("passed", false)),
                        "close-flow-test-failed: The last flow test of line R1"),
                new Cheat(
                        "a pipe without levels",
                        Stage.BUILT,
                        site -> closing(site, job -> at(job, "/asBuilt/pipes/1").remove("endInvert")),
                        "close-level-not-recorded: The levels of pipe M1"),
                new Cheat(
                        "a hold point that nobody recorded",
                        Stage.BUILT,
                        site -> closing(site, job -> ((ArrayNode) job.at("/asBuilt/walls/0/holdPoints")).remove(1)),
                        "close-hold-point-missing: Hold point B of wall A"),
                new Cheat(
                        "a hold point without photo or waiver",
                        Stage.BUILT,
                        site -> closing(
                                site,
                                job -> at(job, "/asBuilt/walls/0/holdPoints/0").remove("waived")),
                        "close-hold-point-unproved: Hold point A of wall A has no photo"),
                new Cheat(
                        "a close with a cent unpaid",
                        Stage.BUILT,
                        site -> closing(site, job -> at(job, "/received/0").put("amount", "$1.00")),
                        "close-unpaid"));
    }

    private static Outcome cancel(Jobsite site, String received, Optional<String> sent, String... by)
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

    /**
     * Signed Thursday August 20, 2026; three business days with Saturday: until Monday 24, of OH read Monday to
     * Friday.
     */
    private static List<Cheat> cancellations() {
        return List.of(
                new Cheat(
                        "a notice where nothing is signed",
                        Stage.ISSUED,
                        site -> told(cancel(site, "2026-08-21", Optional.empty(), IDA)),
                        "No contract is signed, so there is none to cancel"),
                new Cheat(
                        "a notice that was sent too late",
                        Stage.SIGNED,
                        site -> told(cancel(site, "2026-08-26", Optional.empty(), IDA)),
                        "the right to cancel ended at midnight of 2026-08-25"),
                new Cheat(
                        "a notice by a stranger",
                        Stage.SIGNED,
                        site -> told(cancel(site, "2026-08-21", Optional.empty(), "Uncle Osric")),
                        "Uncle Osric is no buyer"),
                new Cheat(
                        "a notice that came before it was sent",
                        Stage.SIGNED,
                        site -> told(cancel(site, "2026-08-21", Optional.of("2026-08-22"), IDA)),
                        "The notice was sent on 2026-08-22, after it came on 2026-08-21"),
                new Cheat(
                        "a notice on a closed job",
                        Stage.CLOSED,
                        site -> told(cancel(site, "2026-10-05", Optional.of("2026-08-21"), IDA)),
                        "The job is closed and its warranty issued"));
    }

    private static String paying(Jobsite site, String when) {
        site.edit(job -> job.set("payments", Jobsite.json("""
                [{"when": "You sign", "share": "10 %%", "atSigning": true}, {"when": "%s", "share": "30 %%"},
                 {"when": "The work is complete", "share": "60 %%"}]""".formatted(when))));
        return ((Bid) OFFICE.bid(site.folder()))
                .findings().stream().map(OFFICE::told).reduce("", (one, next) -> one + "\n" + next);
    }

    private static List<Cheat> payments() {
        return List.of(
                new Cheat(
                        "a payment on the day the machine arrives",
                        Stage.DRAFT,
                        site -> paying(site, "The day the machine arrives"),
                        "payment-before-work: Payment 2"),
                new Cheat(
                        "a deposit that hides behind a start",
                        Stage.DRAFT,
                        site -> paying(site, "The week before we begin"),
                        "deposit-over: The schedule takes"),
                new Cheat(
                        "a payment on words that name nothing",
                        Stage.DRAFT,
                        site -> paying(site, "Second payment"),
                        "payment-before-work: Payment 2"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cheats")
    void isRefusedWithItsMessage(Cheat cheat) throws IOException {
        Jobsite site = SITES.get(cheat.at()).copy(root.resolve("here"));
        String answer = cheat.attempt().on(site);
        assertThat(answer).contains(cheat.answer()).doesNotContain("DONE");
        assertThat(Register.of(site.folder()).check().faults())
                .as("what a cheat took away is missed, and nothing else")
                .allMatch(fault -> fault.found().equals("no such file"));
        assertThat(agreed(site)).as("nothing was agreed").isEqualTo(agreed(SITES.get(cheat.at())));
    }

    /** What both sides agreed to, by the register. */
    private static List<String> agreed(Jobsite site) throws IOException {
        return Register.of(site.folder()).entries().stream()
                .filter(entry -> !BEFORE_THE_YES.contains(entry.event()))
                .map(Entry::toString)
                .toList();
    }

    @Test
    void signaturesComeInOneByOneAndNothingIsAgreedUntilTheLast() throws IOException {
        Jobsite site = SITES.get(Stage.ISSUED).copy(root.resolve("here"));
        String before = Files.readString(site.file());
        Outcome first = accept(site, typed("2026-08-20", IDA, IDA, consent("2026-08-19", "2026-08-20")), "OP1");
        assertThat(told(first))
                .contains("2026-014-P1: the signature of Ida Wrenfield is in. Still to sign: Tobias Wrenfield");
        assertThat(Files.readString(site.file())).isEqualTo(before);
        assertThat(JobRecords.beside(site.file()).contract()).isEmpty();
        done(accept(site, Jobsite.by("2026-08-20", TOBIAS), "OP1"));
        assertThat(site.json().at("/accepted/by").toString()).isEqualTo("[\"" + IDA + "\",\"" + TOBIAS + "\"]");
        assertThat(site.json().at("/accepted/signature/electronic/disclosed").asText())
                .isEqualTo("2026-08-19");
        assertThat(site.json().at("/accepted/furtherSignatures/0/file").asText())
                .isEqualTo("signed.pdf");
        assertThat(kept(site)).isEmpty();
        assertThat(Register.of(site.folder()).check().faults()).isEmpty();
    }

    /**
     * A buyer cancels by mail on the last day: ten business days after the notice came, in which Labor Day does not
     * count
     * (16 CFR 429.1(g), 429.0(f)). Nothing follows on the contract.
     */
    @Test
    void aNoticeStopsTheJobAndSaysByWhenThePaymentGoesBack() throws IOException {
        Jobsite site = SITES.get(Stage.SIGNED).copy(root.resolve("here"));
        site.edit(job -> job.set(
                "received",
                Jobsite.json("[{\"on\": \"2026-08-20\", \"amount\": \"$2,550.00\", \"how\": \"check 7\"}]")));
        Outcome outcome = cancel(site, "2026-08-27", Optional.of("2026-08-25"), TOBIAS);
        done(outcome);
        Entry entry = JobRecords.beside(site.file()).canceled().orElseThrow();
        assertThat(entry.fact("refundBy")).contains("2026-09-09");
        assertThat(entry.fact("refund")).contains("2747.20");
        byte[] paper = Files.readAllBytes(site.folder().resolve("for-the-homeowner/2026-014-X1-cancellation.pdf"));
        assertThat(PageText.all(paper).replaceAll("\\s+", " "))
                .contains("Your contract is canceled", "$2,550.00", "September 9, 2026", "check 7");
        assertThat(site.folder().resolve("for-the-homeowner/2026-014-X1-cancellation.xlsx"))
                .isNotEmptyFile();
        assertThat(kept(site)).contains("contract-canceled");
        site.addChange(1);
        assertThat(told(decide(site, 1, true, Jobsite.on("2026-09-13")))).contains("The contract was canceled");
        assertThat(told(close(site, "2026-10-01", WORK_ENDED, Optional.empty())))
                .contains("The contract was canceled");
        assertThat(told(new Issuing(OFFICE, TODAY).issue(site.folder()))).contains("The contract was canceled");
        assertThat(told(cancel(site, "2026-08-28", Optional.of("2026-08-25"), TOBIAS)))
                .contains("the day it came is \"2026-08-27\" there, and \"2026-08-28\" was asked for");
        assertThat(Register.of(site.folder()).check().faults()).isEmpty();
    }

    /** Power of attorney: the job says by what right. */
    @Test
    void whoHasARightSignsForAnOwner() throws IOException {
        Jobsite site = SITES.get(Stage.ISSUED).copy(root.resolve("here"));
        site.edit(job -> at(job, "/signing").set("signers", Jobsite.json("""
                [{"name": "Osric Wrenfield", "right": "power of attorney", "owner": "Tobias Wrenfield"}]""")));
        done(accept(site, Jobsite.by("2026-08-20", IDA, "Osric Wrenfield"), "OP1"));
    }

    /** A proposal is a promise: company, book and templates may have moved since. */
    @Test
    void whatWasIssuedIsAcceptedAsIssuedWhateverMovedSince() throws IOException {
        Jobsite site = SITES.get(Stage.ISSUED).copy(root.resolve("here"));
        Dollars promised = Dollars.of(JobRecords.beside(site.file())
                .proposal()
                .orElseThrow()
                .fact("total")
                .orElseThrow());
        site.editCompany(company -> at(company, "/priceRules").put("profit", "30%"));
        Office today = Office.with(TemplateFolder.NONE);
        assertThat(new Accepting(today, TODAY).accept(site.folder(), List.of(), Jobsite.yes()))
                .isInstanceOf(Outcome.Issued.class);
        Bid signed = (Bid) today.bid(site.folder());
        assertThat(signed.dossier().contract().contracted().total()).isEqualTo(promised);
        assertThat(JobRecords.beside(site.file()).sealed().total()).contains(promised);
    }

    @Test
    void twoIssuesOfOneJobAtOnceGiveOneRevision() throws Exception {
        Jobsite site = SITES.get(Stage.DRAFT).copy(root.resolve("here"));
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
