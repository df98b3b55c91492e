// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.measure.Length;
import spadework.money.Dollars;

/** Options, acceptances and change orders for tests. */
public final class Agreements {
    public static final LocalDate SIGNED = LocalDate.of(2026, 8, 20);
    public static final Signature ON_PAPER =
            new Signature(List.of(), Optional.of("signed.pdf"), Optional.empty(), Optional.empty(), Optional.empty());

    private Agreements() {}

    public static Job with(Job j, Agreement agreement) {
        return new Job(
                j.head(),
                j.customer(),
                j.site(),
                j.survey(),
                j.work(),
                j.pricing(),
                j.contractTerms(),
                j.acceptedStops(),
                agreement,
                j.notes());
    }

    public static Agreement agreement(List<Option> options, Optional<Accepted> accepted, List<Change> changes) {
        return new Agreement(
                Optional.empty(), options, accepted, changes, List.of(), Optional.empty(), Optional.empty());
    }

    public static Accepted accepted(List<String> options, List<String> declined) {
        return new Accepted(
                1,
                SIGNED,
                List.of("Test Person"),
                options,
                declined,
                List.of(ON_PAPER),
                Dollars.of("1.00"),
                LocalDate.of(2026, 1, 1),
                "t");
    }

    /** One more wall, of that length, on the south side. */
    public static Alteration wall(String label, double feet) {
        Wall w = Jobs.wall();
        Wall more = new Wall(
                label,
                "front wall",
                new WallPlace(Side.SOUTH, w.from(), Length.ofFeet(feet)),
                w.depth(),
                w.footing(),
                w.surface(),
                w.openings(),
                w.windowWells(),
                w.digging());
        return adding(more);
    }

    public static Alteration adding(Wall wall) {
        Alteration none = Alteration.NONE;
        return new Alteration(
                List.of(wall),
                none.finishes(),
                none.corners(),
                none.drains(),
                none.mains(),
                none.roofLines(),
                none.downspouts(),
                none.outlets(),
                none.items(),
                none.restoration(),
                none.takenAway());
    }

    public static Option option(String label, Alteration alteration) {
        return new Option(label, "One more wall", "Dry there too", alteration);
    }

    public static Change change(
            int number,
            Alteration alteration,
            List<UnitCount> counts,
            int days,
            ChangeState state,
            Optional<Decision> decision) {
        return new Change(
                number,
                "Change",
                SIGNED.plusDays(number),
                ChangeReason.WORK_ASKED_FOR,
                "Asked for",
                "Sketch",
                List.of(),
                alteration,
                counts,
                days,
                state,
                decision);
    }

    public static Decision signed(String price) {
        return new Decision(SIGNED.plusDays(30), List.of("Test Person"), List.of(ON_PAPER), Dollars.of(price));
    }
}
