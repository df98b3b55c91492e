// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spadework.money.Dollars;
import spadework.office.MisuseStages.Stage;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.ConsentInput;
import spadework.office.agreement.Issuing;
import spadework.office.agreement.LostProposal;
import spadework.office.agreement.SignatureInput;
import spadework.office.records.JobRecords;
import spadework.office.reply.TemplateFolder;
import spadework.register.Register;

/** Ways to bend a yes: the day, who signs, what was promised, what was sealed, the yes said once more. */
class AcceptMisuseTest extends MisuseCase {
    private static final ConsentInput WHOLE = consent("2026-08-20", "2026-08-20");
    private static final ConsentInput HALF = new ConsentInput(
            WHOLE.given(), Optional.empty(), WHOLE.paper(), Optional.empty(), Optional.empty(), Optional.empty());

    static Stream<Misuse> misuses() {
        return Stream.of(
                new Misuse(
                        "signed on another day than the contract is dated",
                        Stage.ISSUED,
                        site -> {
                            site.edit(job -> at(job, "/signing").put("on", "2026-08-19"));
                            return described(accept(site, SampleJobFolder.on("2026-08-20")));
                        },
                        "The contract is dated 2026-08-19, and with it the last day to cancel; it was signed "
                                + "on 2026-08-20"),
                new Misuse(
                        "one owner named twice for both",
                        Stage.ISSUED,
                        site -> described(accept(site, SampleJobFolder.by("2026-08-20", IDA, "ida  WRENFIELD"))),
                        "ida  WRENFIELD is named twice. Name everybody once."),
                new Misuse(
                        "signed before the paper was there",
                        Stage.ISSUED,
                        site -> described(accept(site, SampleJobFolder.on("2026-08-09"))),
                        "2026-014-P1 was issued on 2026-08-10, after 2026-08-09"),
                new Misuse(
                        "signed on a day that has not come",
                        Stage.ISSUED,
                        site -> described(accept(site, SampleJobFolder.on("2027-01-04"))),
                        "It cannot have been signed on 2027-01-04: today is 2026-11-20"),
                new Misuse(
                        "signed after the price ran out",
                        Stage.ISSUED,
                        site -> described(accept(site, SampleJobFolder.on("2026-09-10"))),
                        "The price held until 2026-09-09"),
                new Misuse(
                        "another day of signing written into the file",
                        Stage.SIGNED,
                        site -> {
                            site.edit(job -> at(job, "/signing").put("on", "2026-08-18"));
                            return kept(site);
                        },
                        "/signing/on: found 2026-08-18; allowed: the day of \"accepted\", 2026-08-20"),
                new Misuse(
                        "an emergency that nobody wrote down by hand",
                        Stage.ISSUED,
                        site -> {
                            site.edit(job -> at(job, "/signing").put("emergency", true));
                            return described(accept(site, SampleJobFolder.on("2026-09-09")));
                        },
                        "Only an emergency for which the buyer called, with a statement in the buyer's own hand"),
                new Misuse(
                        "a stranger signs",
                        Stage.ISSUED,
                        site -> described(accept(site, SampleJobFolder.by("2026-08-20", IDA, "Uncle Osric"))),
                        "Uncle Osric is not named on the job as owner"),
                new Misuse(
                        "nobody signs",
                        Stage.ISSUED,
                        site -> described(accept(site, SampleJobFolder.by("2026-08-20"))),
                        "Nobody is named who signed"),
                new Misuse(
                        "one types for two",
                        Stage.ISSUED,
                        site -> described(accept(
                                site,
                                new SignatureInput(
                                        SampleJobFolder.SIGNED,
                                        List.of(IDA, TOBIAS),
                                        Optional.empty(),
                                        Optional.of(IDA),
                                        WHOLE))),
                        "A typed name signs for one person, and 2 are named"),
                new Misuse(
                        "another name is typed",
                        Stage.ISSUED,
                        site -> described(accept(site, typed("2026-08-20", IDA, TOBIAS, WHOLE))),
                        "The name as typed is \"Tobias Wrenfield\", and Ida Wrenfield is said to have signed"),
                new Misuse(
                        "a typed name with half a consent",
                        Stage.ISSUED,
                        site -> described(accept(site, typed("2026-08-20", IDA, IDA, HALF))),
                        "missing here: the day on which the statement was shown (--disclosed DATE); how to withdraw"
                                + " and what follows (--withdrawal TEXT); the hardware and software that it takes"),
                new Misuse(
                        "a consent before the statement was shown",
                        Stage.ISSUED,
                        site -> described(
                                accept(site, typed("2026-08-20", IDA, IDA, consent("2026-08-20", "2026-08-19")))),
                        "The statement was shown on 2026-08-20, after the consent of 2026-08-19"),
                new Misuse(
                        "a consent after the signature",
                        Stage.ISSUED,
                        site -> described(
                                accept(site, typed("2026-08-20", IDA, IDA, consent("2026-08-21", "2026-08-21")))),
                        "The consent was given on 2026-08-21, after the signature of 2026-08-20"),
                new Misuse(
                        "the same owner signs twice",
                        Stage.ISSUED,
                        site -> {
                            accept(site, SampleJobFolder.by("2026-08-20", IDA));
                            return described(accept(site, SampleJobFolder.by("2026-08-20", IDA)));
                        },
                        "Ida Wrenfield signed 2026-014-P1 already, on 2026-08-20"),
                new Misuse(
                        "two owners sign on two days",
                        Stage.ISSUED,
                        site -> {
                            accept(site, SampleJobFolder.by("2026-08-20", IDA));
                            return described(accept(site, SampleJobFolder.by("2026-08-21", TOBIAS)));
                        },
                        "One day stands on the paper"),
                new Misuse(
                        "two owners sign two things",
                        Stage.ISSUED,
                        site -> {
                            accept(site, SampleJobFolder.by("2026-08-20", IDA), "OP1");
                            return described(accept(site, SampleJobFolder.by("2026-08-20", TOBIAS), "OP2"));
                        },
                        "Ida Wrenfield signed with OP1, and this signature is with OP2. All sign the same"),
                new Misuse(
                        "a new owner after the yes",
                        Stage.SIGNED,
                        site -> {
                            site.edit(job -> ((ArrayNode) job.at("/customer/names")).remove(1));
                            return kept(site);
                        },
                        "job-moved"),
                new Misuse(
                        "another job is accepted than was issued",
                        Stage.ISSUED,
                        site -> {
                            site.edit(job -> at(job, "/walls/0").put("length", "41 ft"));
                            return described(accept(site, SampleJobFolder.yes()));
                        },
                        "The job changed since 2026-014-P1: walls/0/length: \"42 ft\" → \"41 ft\". Put it "
                                + "back, or issue"
                                + " it again"),
                new Misuse(
                        "a proposal that was declined is accepted",
                        Stage.ISSUED,
                        site -> {
                            LostProposal.lose(site.folder(), LocalDate.parse("2026-08-15"), "too dear", TODAY);
                            return described(accept(site, SampleJobFolder.yes()));
                        },
                        "The homeowner declined it, as the register has it"),
                new Misuse(
                        "an option that was not offered",
                        Stage.ISSUED,
                        site -> described(accept(site, SampleJobFolder.yes(), "OP9")),
                        "There is no option OP9; there is OP1, OP2"),
                new Misuse(
                        "the signed price raised in the file",
                        Stage.SIGNED,
                        site -> {
                            site.edit(job -> at(job, "/accepted").put("price", "$99,000.00"));
                            return kept(site);
                        },
                        "sealed-price: The job file says that the contract was signed at $99,000.00. The "
                                + "register has $"),
                new Misuse(
                        "the buyer made younger after the yes",
                        Stage.SIGNED,
                        site -> {
                            site.edit(job -> at(job, "/signing").put("oldestAge", 40));
                            return kept(site);
                        },
                        "signing-moved: The job file says otherwise how the contract was signed"),
                new Misuse(
                        "a wall made shorter after the yes",
                        Stage.SIGNED,
                        site -> {
                            site.edit(job -> at(job, "/walls/0").put("length", "12 ft"));
                            return kept(site);
                        },
                        "job-moved"),
                new Misuse(
                        "the yes once more on another day",
                        Stage.SIGNED,
                        site -> described(accept(site, SampleJobFolder.on("2026-08-21"), "OP1")),
                        "2026-014-A1 is registered already, with other facts: the day of signing is \"2026-08-20\""
                                + " there, and \"2026-08-21\" was asked for"),
                new Misuse(
                        "the yes once more with other options",
                        Stage.SIGNED,
                        site -> described(accept(site, SampleJobFolder.yes(), "OP1", "OP2")),
                        "the options taken is \"OP1\" there, and \"OP1, OP2\" was asked for"),
                new Misuse(
                        "the yes once more by another",
                        Stage.SIGNED,
                        site -> described(accept(site, SampleJobFolder.by("2026-08-20", "Uncle Osric"), "OP1")),
                        "who signed is \"Ida Wrenfield; Tobias Wrenfield\" there, and \"Uncle Osric\" was asked for"),
                new Misuse(
                        "a yes where no contract is prepared",
                        Stage.DRAFT,
                        site -> {
                            site.edit(job -> job.remove("signing"));
                            new Issuing(OFFICE, TODAY).issue(site.folder());
                            return described(accept(site, SampleJobFolder.yes()));
                        },
                        "No contract is prepared, so there was none to sign"),
                new Misuse(
                        "a draft is signed: rules known from memory",
                        Stage.DRAFT,
                        site -> {
                            Files.delete(site.folder().resolve("state-rules.json"));
                            new Issuing(Office.with(TemplateFolder.NONE), TODAY).issue(site.folder());
                            return described(accept(site, SampleJobFolder.yes()));
                        },
                        "rules-from-memory: What is known of the law of OH rests in part on memory"),
                new Misuse(
                        "a draft is signed: a notice without its words",
                        Stage.DRAFT,
                        site -> {
                            Files.delete(site.folder().resolve("state-rules.json"));
                            new Issuing(Office.with(TemplateFolder.NONE), TODAY).issue(site.folder());
                            return described(accept(site, SampleJobFolder.yes()));
                        },
                        "notice-unworded: OH wants a notice in the contract, excess cost notice"));
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

    private static SignatureInput typed(String on, String by, String typed, ConsentInput consent) {
        return new SignatureInput(LocalDate.parse(on), List.of(by), Optional.empty(), Optional.of(typed), consent);
    }

    @Test
    void signaturesComeInOneByOneAndNothingIsAgreedUntilTheLast() throws IOException {
        SampleJobFolder site = MisuseStages.at(Stage.ISSUED).copy(root.resolve("here"));
        String before = Files.readString(site.file());
        Outcome first = accept(site, typed("2026-08-20", IDA, IDA, consent("2026-08-19", "2026-08-20")), "OP1");
        assertThat(described(first))
                .contains("2026-014-P1: the signature of Ida Wrenfield is in. Still to sign: Tobias Wrenfield");
        assertThat(Files.readString(site.file())).isEqualTo(before);
        assertThat(JobRecords.beside(site.file()).contract()).isEmpty();
        done(accept(site, SampleJobFolder.by("2026-08-20", TOBIAS), "OP1"));
        assertThat(site.json().at("/accepted/by").toString()).isEqualTo("[\"" + IDA + "\",\"" + TOBIAS + "\"]");
        assertThat(site.json().at("/accepted/signature/electronic/disclosed").asText())
                .isEqualTo("2026-08-19");
        assertThat(site.json().at("/accepted/furtherSignatures/0/file").asText())
                .isEqualTo("signed.pdf");
        assertThat(kept(site)).isEmpty();
        assertThat(Register.of(site.folder()).check().faults()).isEmpty();
    }

    /** Power of attorney: the job says by what right. */
    @Test
    void whoHasARightSignsForAnOwner() throws IOException {
        SampleJobFolder site = MisuseStages.at(Stage.ISSUED).copy(root.resolve("here"));
        site.edit(job -> at(job, "/signing").set("signers", SampleJobFolder.json("""
                [{"name": "Osric Wrenfield", "right": "power of attorney", "owner": "Tobias Wrenfield"}]""")));
        done(accept(site, SampleJobFolder.by("2026-08-20", IDA, "Osric Wrenfield"), "OP1"));
    }

    /** A proposal is a promise: company, book and templates may have moved since. */
    @Test
    void whatWasIssuedIsAcceptedAsIssuedWhateverMovedSince() throws IOException {
        SampleJobFolder site = MisuseStages.at(Stage.ISSUED).copy(root.resolve("here"));
        Dollars promised = Dollars.of(JobRecords.beside(site.file())
                .proposal()
                .orElseThrow()
                .fact("total")
                .orElseThrow());
        site.editCompany(company -> at(company, "/priceRules").put("profit", "30%"));
        Office today = Office.with(TemplateFolder.NONE);
        assertThat(new Accepting(today, TODAY).accept(site.folder(), List.of(), SampleJobFolder.yes()))
                .isInstanceOf(Outcome.Issued.class);
        Bid signed = (Bid) today.bid(site.folder());
        assertThat(signed.dossier().contract().contracted().total()).isEqualTo(promised);
        assertThat(JobRecords.beside(site.file()).sealed().total()).contains(promised);
    }
}
