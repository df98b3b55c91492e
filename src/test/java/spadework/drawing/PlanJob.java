// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import spadework.job.Access;
import spadework.job.Address;
import spadework.job.Agreement;
import spadework.job.Condition;
import spadework.job.ContractTerms;
import spadework.job.Customer;
import spadework.job.Digging;
import spadework.job.Downspout;
import spadework.job.Finish;
import spadework.job.FinishSystem;
import spadework.job.Footing;
import spadework.job.FootingDrain;
import spadework.job.House;
import spadework.job.HousePlace;
import spadework.job.Job;
import spadework.job.JobHead;
import spadework.job.JobPricing;
import spadework.job.LimitKind;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.PitPlace;
import spadework.job.Protection;
import spadework.job.Restoration;
import spadework.job.Schedule;
import spadework.job.Seepage;
import spadework.job.Side;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.SolidRun;
import spadework.job.Space;
import spadework.job.SumpPit;
import spadework.job.Surface;
import spadework.job.Survey;
import spadework.job.TeeAt;
import spadework.job.Texture;
import spadework.job.TrenchSize;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.WallKind;
import spadework.job.WallPlace;
import spadework.job.WallSurface;
import spadework.job.WarrantyTerms;
import spadework.job.Water;
import spadework.job.Work;
import spadework.measure.Area;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.place.OutlineSpot;
import spadework.wording.Language;

/** Puts together a job of which only what a plan shows matters. All of it is invented. */
public final class PlanJob {
    private final House house;
    private final List<Wall> walls = new ArrayList<>();
    private final List<FootingDrain> drains = new ArrayList<>();
    private final List<SolidRun> mains = new ArrayList<>();
    private final List<SolidRun> roofLines = new ArrayList<>();
    private final List<Downspout> downspouts = new ArrayList<>();
    private final List<Outlet> outlets = new ArrayList<>();
    private final List<SiteLimit> limits = new ArrayList<>();

    private PlanJob(House house) {
        this.house = house;
    }

    /** A house of that size in feet. */
    public static PlanJob house(double eastWest, double northSouth) {
        return new PlanJob(new House(Length.ofFeet(eastWest), Length.ofFeet(northSouth)));
    }

    /** The test job that stands for most: two walls that meet at the north-east corner, daylight, two downspouts. */
    public static Job corner() {
        return house(40, 28)
                .wall("A", Side.NORTH, 0, 40)
                .wall("B", Side.EAST, 0, 28)
                .drain("D1", TeeAt.END, "M1", "A", "B")
                .main("M1", "Swale")
                .roofLine("R1", "Swale")
                .downspout("DS1", "R1")
                .downspout("DS2", "R1")
                .outlet("Swale", OutletKind.DAYLIGHT)
                .limit(LimitKind.TREE, "A", 9)
                .limit(LimitKind.PROPERTY_LINE, "B", 22)
                .job();
    }

    /** Twelve walls, three on a side. */
    public static Job twelveWalls() {
        PlanJob plan = house(48, 36);
        for (int i = 0; i < 12; i++) {
            Side side = Side.values()[i / 3];
            double part = OutlineSpot.sideFeet(plan.house, side) / 3;
            plan.wall(String.valueOf((char) ('A' + i)), side, part * (i % 3), part);
        }
        return plan.drain("D1", TeeAt.MIDDLE, "M1", "A", "B", "C", "D", "E", "F")
                .drain("D2", TeeAt.START, "M1", "I", "H", "G", "L", "K", "J")
                .main("M1", "Sump")
                .roofLine("R1", "Curb")
                .roofLine("R2", "Curb")
                .downspout("1", "R1")
                .downspout("2", "R1")
                .downspout("3", "R2")
                .outlet("Sump", OutletKind.SUMP)
                .outlet("Curb", OutletKind.APPROVED_STORM)
                .limit(LimitKind.TREE, "B", 11)
                .limit(LimitKind.WALK, "H", 4)
                .limit(LimitKind.PROPERTY_LINE, "D", 12)
                .limit(LimitKind.NEIGHBOR_FOOTING, "D", 18)
                .limit(LimitKind.UTILITY, "K", 6.5)
                .job();
    }

    public PlanJob wall(String label, Side faces, double from, double length) {
        return wall(label, "the " + faces.name().toLowerCase(Locale.ROOT) + " wall", faces, from, length);
    }

    public PlanJob wall(String label, String where, Side faces, double from, double length) {
        walls.add(new Wall(
                label,
                where,
                new WallPlace(faces, Length.ofFeet(from), Length.ofFeet(length)),
                new WallDepth(Length.ofFeet(6), Length.ofFeet(6)),
                new Footing(Length.ofInches(8), Length.ofInches(6)),
                new WallSurface(
                        WallKind.BLOCK,
                        new Condition(
                                Surface.BARE,
                                Length.ZERO,
                                false,
                                false,
                                Optional.empty(),
                                false,
                                Optional.empty(),
                                Set.of()),
                        List.of(),
                        new Finish(FinishSystem.COATING, Optional.empty(), Optional.empty())),
                List.of(),
                0,
                new Digging(Access.MACHINE, Percent.ZERO, Length.ofFeet(2), Protection.SLOPED)));
        return this;
    }

    public PlanJob drain(String label, TeeAt teeAt, String into, String... along) {
        drains.add(new FootingDrain(
                label,
                List.of(along),
                Optional.empty(),
                teeAt,
                into,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        return this;
    }

    public PlanJob main(String label, String into) {
        return main(label, into, 60);
    }

    public PlanJob main(String label, String into, double feet) {
        mains.add(run(label, into, feet));
        return this;
    }

    public PlanJob roofLine(String label, String into) {
        return roofLine(label, into, 60);
    }

    public PlanJob roofLine(String label, String into, double feet) {
        roofLines.add(run(label, into, feet));
        return this;
    }

    public PlanJob downspout(String label, String into) {
        downspouts.add(new Downspout(label, Area.ofSquareFeet(400), into));
        return this;
    }

    /** One that comes down that far from the corner of a side. */
    public PlanJob downspout(String label, String into, Side side, double from) {
        downspouts.add(new Downspout(
                label, Area.ofSquareFeet(400), into, Optional.of(new HousePlace(side, Length.ofFeet(from)))));
        return this;
    }

    /** An outlet of which the words do not say where it is. */
    public PlanJob outlet(String label, OutletKind kind) {
        return outlet(label, kind, "the low ground below the garden");
    }

    public PlanJob outlet(String label, OutletKind kind, String what) {
        return outlet(label, kind, what, Optional.empty());
    }

    /** An outlet that lies so far from the house. */
    public PlanJob outlet(String label, String what, double fromHouse) {
        return outlet(label, OutletKind.DAYLIGHT, what, Optional.of(fromHouse));
    }

    private PlanJob outlet(String label, OutletKind kind, String what, Optional<Double> fromHouse) {
        return outlet(label, kind, what, fromHouse.map(Length::ofFeet), Optional.empty(), Optional.empty());
    }

    /** A sump whose basin is set in, and whose discharge pipe leads so far from the house. */
    public PlanJob sump(String label, PitPlace place, Optional<Length> fromFooting, Optional<Length> end, double pipe) {
        SumpPit pit = new SumpPit(
                Optional.of(Length.ofInches(18)),
                Optional.of(Length.ofInches(24)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                place,
                fromFooting,
                Optional.empty());
        return outlet(label, OutletKind.SUMP, "yard", end, Optional.of(Length.ofFeet(pipe)), Optional.of(pit));
    }

    private PlanJob outlet(
            String label,
            OutletKind kind,
            String what,
            Optional<Length> fromHouse,
            Optional<Length> discharge,
            Optional<SumpPit> pit) {
        outlets.add(new Outlet(
                label,
                kind,
                what,
                Optional.empty(),
                fromHouse,
                Optional.empty(),
                Optional.empty(),
                discharge,
                Optional.empty(),
                pit,
                Optional.empty()));
        return this;
    }

    public PlanJob limit(LimitKind kind, String wall, double feet) {
        limits.add(new SiteLimit(kind, wall, Length.ofFeet(feet), Optional.empty(), ""));
        return this;
    }

    public Job job() {
        Address address = new Address("12 Invented Lane", "Nowhere", "OH", "43000");
        LocalDate day = LocalDate.of(2026, 3, 3);
        return new Job(
                new JobHead("T-1", "Test", day, 30, Language.ENGLISH),
                new Customer(List.of("Test Owner"), Optional.empty(), Optional.empty(), Optional.empty()),
                new Site(
                        address,
                        Optional.empty(),
                        Space.BASEMENT,
                        house,
                        Optional.empty(),
                        Optional.empty(),
                        new Soil(Texture.CLAY, Seepage.NONE, SoilType.C),
                        Optional.empty(),
                        limits,
                        Optional.empty(),
                        Optional.empty(),
                        List.of()),
                new Survey(List.of(), List.of(), List.of()),
                new Work(
                        walls,
                        List.of(),
                        new Water(drains, mains, roofLines, downspouts, outlets, List.of()),
                        new Restoration(
                                Length.ZERO,
                                Area.ofSquareFeet(0),
                                Length.ZERO,
                                Area.ofSquareFeet(0),
                                Area.ofSquareFeet(0),
                                Area.ofSquareFeet(0),
                                0),
                        List.of(),
                        new Schedule(day, day, 1, "")),
                new JobPricing(List.of(), List.of(), Optional.empty()),
                new ContractTerms(
                        List.of(),
                        List.of(),
                        List.of(),
                        new WarrantyTerms(List.of(), 5, 10, 5, 30, 1, 30, List.of(), List.of()),
                        List.of()),
                List.of(),
                Agreement.NONE,
                List.of());
    }

    private static SolidRun run(String label, String into, double feet) {
        return new SolidRun(
                label,
                Length.ofFeet(feet),
                Optional.empty(),
                new TrenchSize(Length.ofFeet(1), Length.ofFeet(2)),
                0,
                into,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
