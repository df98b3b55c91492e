// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import spadework.measure.Area;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.wording.Language;

/** Plain jobs for tests: one sound wall with a drain to daylight, changed by each test where it looks. */
public final class Jobs {
    private Jobs() {}

    public static Wall wall() {
        return new Wall(
                "A",
                "back wall",
                new WallPlace(Side.NORTH, Length.ZERO, Length.ofFeet(40)),
                new WallDepth(Length.ofFeet(5), Length.ofFeet(5)),
                new Footing(Length.ofInches(8), Length.ofInches(6)),
                new WallSurface(
                        WallKind.BLOCK,
                        sound(),
                        List.of(),
                        new Finish(FinishSystem.COATING, Optional.empty(), Optional.empty())),
                List.of(),
                0,
                new Digging(Access.MACHINE, Percent.ZERO, Length.ofInches(24), Protection.SLOPED));
    }

    public static Condition sound() {
        return new Condition(
                Surface.BARE, Length.ZERO, false, false, Optional.of(Length.ZERO), false, Optional.of(true), Set.of());
    }

    public static Wall deep(double feetToFootingTop) {
        Wall wall = wall();
        return wall.deeperBy(Length.ofFeet(feetToFootingTop).minus(wall.depthStart()));
    }

    public static Wall with(Wall w, Condition condition) {
        return new Wall(
                w.label(),
                w.where(),
                w.place(),
                w.depth(),
                w.footing(),
                new WallSurface(w.kind(), condition, w.strip(), w.finish()),
                w.openings(),
                w.windowWells(),
                w.digging());
    }

    public static Wall with(Wall w, WallKind kind) {
        return new Wall(
                w.label(),
                w.where(),
                w.place(),
                w.depth(),
                w.footing(),
                new WallSurface(kind, w.condition(), w.strip(), w.finish()),
                w.openings(),
                w.windowWells(),
                w.digging());
    }

    public static Wall with(Wall w, Digging digging) {
        return new Wall(
                w.label(),
                w.where(),
                w.place(),
                w.depth(),
                w.footing(),
                w.surface(),
                w.openings(),
                w.windowWells(),
                digging);
    }

    public static Wall with(Wall w, Finish finish) {
        return new Wall(
                w.label(),
                w.where(),
                w.place(),
                w.depth(),
                w.footing(),
                new WallSurface(w.kind(), w.condition(), w.strip(), finish),
                w.openings(),
                w.windowWells(),
                w.digging());
    }

    public static Wall protectedBy(Wall w, Protection protection) {
        Digging d = w.digging();
        return with(w, new Digging(d.access(), d.handShare(), d.bottomWidth(), protection));
    }

    public static Site site() {
        return new Site(
                new Address("1 Test Lane", "Testford", "OH", "43000"),
                Optional.of(1990),
                Space.BASEMENT,
                new House(Length.ofFeet(60), Length.ofFeet(30)),
                Optional.of("door sill, 100.00 ft"),
                Optional.of(Length.ofFeet(93)),
                new Soil(Texture.LOAM, Seepage.NONE, SoilType.B),
                Optional.empty(),
                List.of(),
                Optional.of(new LocateTicket("T-1", Optional.empty())),
                Optional.empty(),
                List.of());
    }

    public static Site with(Site s, Soil soil) {
        return new Site(
                s.address(),
                s.yearBuilt(),
                s.space(),
                s.house(),
                s.benchmark(),
                s.insideFloor(),
                soil,
                s.rain(),
                s.limits(),
                s.locateTicket(),
                s.catchment(),
                List.of());
    }

    public static Site with(Site s, SiteLimit limit) {
        return new Site(
                s.address(),
                s.yearBuilt(),
                s.space(),
                s.house(),
                s.benchmark(),
                s.insideFloor(),
                s.soil(),
                s.rain(),
                List.of(limit),
                s.locateTicket(),
                s.catchment(),
                List.of());
    }

    public static Site builtIn(Site s, Optional<Integer> year) {
        return new Site(
                s.address(),
                year,
                s.space(),
                s.house(),
                s.benchmark(),
                s.insideFloor(),
                s.soil(),
                s.rain(),
                s.limits(),
                s.locateTicket(),
                s.catchment(),
                List.of());
    }

    public static Site withoutTicket(Site s) {
        return new Site(
                s.address(),
                s.yearBuilt(),
                s.space(),
                s.house(),
                s.benchmark(),
                s.insideFloor(),
                s.soil(),
                s.rain(),
                s.limits(),
                Optional.empty(),
                s.catchment(),
                List.of());
    }

    public static FootingDrain drain(double start, double end) {
        return new FootingDrain(
                "D1",
                List.of("A"),
                Optional.empty(),
                TeeAt.END,
                "M1",
                Optional.of(Length.ofFeet(start)),
                Optional.of(Length.ofFeet(end)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public static SolidRun main(double length, double start, double end) {
        return new SolidRun(
                "M1",
                Length.ofFeet(length),
                Optional.empty(),
                new TrenchSize(Length.ofFeet(1), Length.ofFeet(3)),
                0,
                "O1",
                Optional.of(Length.ofFeet(start)),
                Optional.of(Length.ofFeet(end)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public static Outlet outlet(OutletKind kind, Optional<String> permission, Optional<Length> fromLine) {
        return new Outlet(
                "O1",
                kind,
                "swale",
                Optional.of(Length.ofFeet(91)),
                Optional.of(Length.ofFeet(40)),
                fromLine,
                permission,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public static Water water() {
        return new Water(
                List.of(drain(92.5, 92.3)),
                List.of(main(40, 92.2, 91.4)),
                List.of(),
                List.of(),
                List.of(outlet(OutletKind.DAYLIGHT, Optional.empty(), Optional.of(Length.ofFeet(20)))),
                List.of());
    }

    public static Job job(Site site, Water water, Wall... walls) {
        Area none = Area.ofSquareFeet(0);
        return new Job(
                new JobHead("T-1", "Test", LocalDate.of(2026, 8, 10), 30, Language.ENGLISH),
                new Customer(List.of("Test Person"), Optional.empty(), Optional.empty(), Optional.empty()),
                site,
                new Survey(List.of(), List.of(), List.of()),
                new Work(
                        List.of(walls),
                        List.of(),
                        water,
                        new Restoration(Length.ofFeet(40), none, Length.ofInches(4), none, none, none, 0),
                        List.of(),
                        new Schedule(LocalDate.of(2026, 9, 1), LocalDate.of(2026, 9, 10), 5, "")),
                new JobPricing(List.of(), List.of(), Optional.empty()),
                new ContractTerms(
                        List.of(),
                        List.of(),
                        List.of(
                                new Payment("signing", Percent.of("10"), true),
                                new Payment("done", Percent.of("90"), false)),
                        new WarrantyTerms(List.of(), 5, 10, 5, 30, 1, 30, List.of(), List.of()),
                        List.of()),
                List.of(),
                Agreement.NONE,
                List.of());
    }

    public static Job job(Wall... walls) {
        return job(site(), water(), walls);
    }

    public static Job job() {
        return job(wall());
    }

    public static Job job(UnaryOperator<Wall> change) {
        return job(change.apply(wall()));
    }

    public static Job withCorners(Job j, List<Corner> corners) {
        return new Job(
                j.head(),
                j.customer(),
                j.site(),
                j.survey(),
                new Work(j.walls(), corners, j.water(), j.restoration(), j.protection(), j.schedule()),
                j.pricing(),
                j.contractTerms(),
                j.acceptedStops(),
                j.agreement(),
                j.notes());
    }
}
