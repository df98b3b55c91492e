// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.contract.Contract;
import spadework.contract.Contracting;
import spadework.contract.Revision;
import spadework.job.Accepted;
import spadework.job.Agreed;
import spadework.job.Agreement;
import spadework.job.Agreements;
import spadework.job.Alteration;
import spadework.job.AsBuilt;
import spadework.job.BuiltPipe;
import spadework.job.BuiltWall;
import spadework.job.Change;
import spadework.job.ChangeReason;
import spadework.job.ChangeState;
import spadework.job.Closed;
import spadework.job.Decision;
import spadework.job.FlowTest;
import spadework.job.HoldPoint;
import spadework.job.Job;
import spadework.job.Option;
import spadework.job.Received;
import spadework.job.Restoration;
import spadework.job.TakenAway;
import spadework.job.UnitCount;
import spadework.measure.Area;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.DossierPhotos;
import spadework.paperwork.Picture;
import spadework.paperwork.WorkPictures;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
import spadework.samples.Samples;
import spadework.schedule.DayQuantities;

/** The sample of two walls with an agreement written into it: options, changes, payments, what was built. */
public final class AgreedBids {
    private static final Area NONE = Area.ofSquareFeet(0);
    public static final LocalDate DAY = LocalDate.of(2026, 9, 18);
    private static final Bid SAMPLE = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"));

    private AgreedBids() {}

    /** The dossier of the sample as it is. */
    public static Dossier sample() {
        return SAMPLE.proposed();
    }

    /** A bid of that agreement. */
    public static Bid of(Agreement agreement) {
        return of(agreement, Optional.empty());
    }

    /** The same as an issue of its proposal. */
    public static Bid of(Agreement agreement, Optional<Revision> revision) {
        Dossier d = SAMPLE.proposed();
        Job job = Agreements.with(d.job(), agreement);
        Contract contract = Contracting.of(job, d.company(), d.book(), SAMPLE.proposedQuote());
        Job agreed = Agreed.of(job);
        Quote quote = Pricing.of(agreed, d.company(), d.book(), DayQuantities.takeoff(agreed, d.company(), d.book()));
        Job contracted = Agreed.contracted(job);
        return new Bid(
                dossier(job, contract, revision),
                dossier(contracted, contract, revision),
                dossier(agreed, contract, revision),
                SAMPLE.proposedQuote(),
                quote);
    }

    private static Dossier dossier(Job job, Contract contract, Optional<Revision> revision) {
        Dossier d = SAMPLE.proposed();
        Picture picture = d.photos().visit().get(0);
        return new Dossier(
                job,
                d.company(),
                d.book(),
                DayQuantities.takeoff(job, d.company(), d.book()),
                contract,
                d.law(),
                revision,
                d.findings(),
                d.phrases(),
                d.terms(),
                d.homeowner(),
                new DossierPhotos(
                        d.photos().logo(),
                        d.photos().visit(),
                        new WorkPictures(
                                Map.of(2, List.of(new Picture(1, "ledge.jpg", "Ledge with the tape", picture.data()))),
                                List.of(new Picture(1, "seen.jpg", "A: coating seen", picture.data())))));
    }

    /** Two options: a wall that costs, shrubs that save. */
    public static List<Option> options() {
        return List.of(
                new Option("OP1", "Front wall too", "It stays dry there", Agreements.wall("F", 20)),
                new Option("OP2", "You move the shrubs", "Before we come", without(6)));
    }

    /** An agreement with the options, nothing accepted. */
    public static Agreement open() {
        return agreement(Optional.empty(), List.of(), List.of(), Optional.empty(), Optional.empty());
    }

    /** Option 2 taken; a wall, rock by its unit price, one pending and one declined change. */
    public static Agreement changed() {
        return agreement(yes(), changes(true), List.of(), Optional.empty(), Optional.empty());
    }

    /** The same without the pending change, built, paid in part or in full, closed where it has a certificate. */
    public static Agreement built(String paid, Optional<String> certificate) {
        return agreement(
                yes(),
                changes(false),
                List.of(
                        new Received(DAY.minusDays(20), Dollars.of("2500.00"), "check 11"),
                        new Received(DAY, Dollars.of(paid), "check 12")),
                Optional.of(record()),
                certificate.map(number -> new Closed(DAY, Optional.of(number), Optional.empty())));
    }

    private static Agreement agreement(
            Optional<Accepted> yes,
            List<Change> changes,
            List<Received> received,
            Optional<AsBuilt> built,
            Optional<Closed> closed) {
        return new Agreement(Optional.empty(), options(), yes, changes, received, built, closed);
    }

    private static Optional<Accepted> yes() {
        return Optional.of(Agreements.accepted(List.of("OP2"), List.of("OP1")));
    }

    private static List<Change> changes(boolean pending) {
        Change wall = change(
                1,
                "West wall added",
                ChangeReason.WORK_ASKED_FOR,
                Agreements.wall("C", 24),
                List.of(),
                3,
                ChangeState.ACCEPTED,
                "4321.09");
        Change rock = change(
                2,
                "Rock at wall B",
                ChangeReason.ROCK,
                Alteration.NONE,
                List.of(new UnitCount("U-ROCK", new BigDecimal("1.25"), Unit.CUBIC_YARD)),
                1,
                ChangeState.ACCEPTED,
                rockPrice());
        Change sod = change(
                3, "Sod at the back", ChangeReason.WORK_ASKED_FOR, sod(), List.of(), 1, ChangeState.DECLINED, "");
        Change later =
                change(4, "Fewer shrubs", ChangeReason.LESS_WORK, without(0), List.of(), -1, ChangeState.PENDING, "");
        return pending ? List.of(wall, rock, sod, later) : List.of(wall, rock, sod);
    }

    private static String rockPrice() {
        Dollars price = SAMPLE.proposedQuote().unitPrices().stream()
                .filter(one -> one.code().equals("U-ROCK"))
                .findFirst()
                .orElseThrow()
                .price();
        return price.amount().multiply(new BigDecimal("1.25")).setScale(2).toPlainString();
    }

    private static Change change(
            int number,
            String title,
            ChangeReason reason,
            Alteration alteration,
            List<UnitCount> counts,
            int days,
            ChangeState state,
            String price) {
        Optional<Decision> decision = price.isEmpty()
                ? Optional.empty()
                : Optional.of(new Decision(
                        LocalDate.of(2026, 9, 8).plusDays(number),
                        List.of("Ida Wrenfield"),
                        List.of(Agreements.ON_PAPER),
                        Dollars.of(price)));
        return new Change(
                number,
                title,
                LocalDate.of(2026, 9, 7).plusDays(number),
                reason,
                "We saw it in the trench",
                "Seen on site",
                List.of(),
                alteration,
                counts,
                days,
                state,
                decision);
    }

    private static Alteration without(int plants) {
        Restoration less = new Restoration(Length.ZERO, NONE, Length.ZERO, NONE, NONE, NONE, plants);
        return Alteration.NONE.taking(
                new TakenAway(List.of(), List.of(), List.of(), List.of(), List.of(), Optional.of(less)));
    }

    private static Alteration sod() {
        Alteration none = Alteration.NONE;
        Restoration more = new Restoration(Length.ZERO, NONE, Length.ZERO, NONE, Area.ofSquareFeet(420), NONE, 0);
        return new Alteration(
                none.walls(),
                none.finishes(),
                none.corners(),
                none.drains(),
                none.mains(),
                none.roofLines(),
                none.downspouts(),
                none.outlets(),
                none.items(),
                Optional.of(more),
                none.takenAway());
    }

    private static AsBuilt record() {
        return new AsBuilt(
                DAY.minusDays(11),
                Optional.of(DAY),
                List.of(wall("A", 42, "13.2"), wall("B", 26, "7.9"), wall("C", 25, "9.0")),
                List.of(pipe("D1", 70), pipe("M1", 66), pipe("R1", 78)),
                Optional.empty(),
                Optional.of(0),
                Optional.empty(),
                List.of(new FlowTest(DAY, true, "Hose at the cleanout, out at the swale", "Ida Wrenfield")),
                List.of(),
                List.of(),
                "");
    }

    private static BuiltWall wall(String label, double feet, String gallons) {
        return new BuiltWall(
                label,
                Length.ofFeet(feet),
                Length.ofFeet(5),
                Length.ofFeet(5),
                Optional.of(new BigDecimal(gallons)),
                List.of("K-" + label),
                Optional.of("wall 58 °F"),
                List.of(new HoldPoint("coating seen", DAY, "Ida Wrenfield", Optional.of("seen.jpg"))),
                List.of());
    }

    private static BuiltPipe pipe(String label, double feet) {
        return new BuiltPipe(label, Length.ofFeet(feet), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
