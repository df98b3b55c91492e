// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import spadework.measure.Length;

/** Jobs with other pipes, runs and sumps than they had, for tests. */
public final class JobPipes {
    private JobPipes() {}

    public static Job withDrains(Job job, List<FootingDrain> drains) {
        Water w = job.water();
        return job.withWater(new Water(drains, w.mains(), w.roofLines(), w.downspouts(), w.outlets(), w.candidates()));
    }

    /** The job whose first drain is its only one and runs along these walls. */
    public static Job drainedAlong(Job job, List<String> walls) {
        FootingDrain d = job.water().drains().get(0);
        return withDrains(
                job,
                List.of(new FootingDrain(
                        d.label(),
                        walls,
                        d.item(),
                        d.teeAt(),
                        d.into(),
                        d.startInvert(),
                        d.endInvert(),
                        d.teeInvert(),
                        d.startGrade(),
                        d.endGrade())));
    }

    public static Job withMains(Job job, SolidRun... mains) {
        Water w = job.water();
        return job.withWater(
                new Water(w.drains(), List.of(mains), w.roofLines(), w.downspouts(), w.outlets(), w.candidates()));
    }

    public static Job withRoofLines(Job job, SolidRun... lines) {
        Water w = job.water();
        return job.withWater(
                new Water(w.drains(), w.mains(), List.of(lines), w.downspouts(), w.outlets(), w.candidates()));
    }

    /** The job with its first outlet changed. */
    public static Job withOutlet(Job job, UnaryOperator<Outlet> change) {
        Water w = job.water();
        Outlet outlet = change.apply(w.outlets().get(0));
        return job.withWater(
                new Water(w.drains(), w.mains(), w.roofLines(), w.downspouts(), List.of(outlet), w.candidates()));
    }

    /** A run of which no level is known. */
    public static SolidRun run(String label, double length, TrenchSize trench) {
        return new SolidRun(
                label,
                Length.ofFeet(length),
                Optional.empty(),
                trench,
                0,
                "O1",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** A run between two depths, by levels that fall a foot. */
    public static SolidRun run(String label, double length, TrenchSize trench, double from, double to) {
        double bedding = 2.0 / 12;
        return new SolidRun(
                label,
                Length.ofFeet(length),
                Optional.empty(),
                trench,
                0,
                "O1",
                Optional.of(Length.ofFeet(92)),
                Optional.of(Length.ofFeet(91)),
                Optional.of(Length.ofFeet(92 - bedding + from)),
                Optional.of(Length.ofFeet(91 - bedding + to)),
                Optional.empty());
    }

    /** The same run, lying so far along a wall before it leaves its trench. */
    public static SolidRun beside(SolidRun run, String wall, double length) {
        return new SolidRun(
                run.label(),
                run.length(),
                run.item(),
                run.trench(),
                run.bends(),
                run.into(),
                run.startInvert(),
                run.endInvert(),
                run.startGrade(),
                run.endGrade(),
                Optional.of(new BesideWall(wall, Length.ofFeet(length))));
    }

    /** A sump's outlet with its pit elsewhere, so far from the footing. */
    public static Outlet pitAt(Outlet outlet, PitPlace place, Optional<Double> away) {
        SumpPit p = outlet.pit().orElseThrow();
        return with(
                outlet,
                Optional.of(new SumpPit(
                        p.diameter(),
                        p.depth(),
                        p.lift(),
                        p.pumpFlow(),
                        p.pumpHead(),
                        place,
                        away.map(Length::ofFeet),
                        p.observedInflow())),
                outlet.dischargeTrench());
    }

    /** A sump's outlet of whose basin nothing is known. */
    public static Outlet withoutPit(Outlet outlet) {
        return with(outlet, Optional.empty(), outlet.dischargeTrench());
    }

    public static Outlet withTrench(Outlet outlet, TrenchSize trench) {
        return with(outlet, outlet.pit(), Optional.of(trench));
    }

    /** An outlet that is described in those words. */
    public static Outlet named(Outlet outlet, String words) {
        return with(outlet, words, outlet.pit(), outlet.dischargeTrench());
    }

    private static Outlet with(Outlet outlet, Optional<SumpPit> pit, Optional<TrenchSize> trench) {
        return with(outlet, outlet.what(), pit, trench);
    }

    private static Outlet with(Outlet o, String words, Optional<SumpPit> pit, Optional<TrenchSize> trench) {
        return new Outlet(
                o.label(),
                o.kind(),
                words,
                o.level(),
                o.fromHouse(),
                o.fromLotLine(),
                o.permission(),
                o.discharge(),
                o.waterLevel(),
                pit,
                trench);
    }
}
