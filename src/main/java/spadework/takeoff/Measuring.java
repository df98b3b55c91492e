// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.ArrayList;
import java.util.List;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.SolidRun;
import spadework.job.TestPit;
import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Section;
import spadework.takeoff.wall.Trenches;
import spadework.working.Given;

/** From a job to its takeoff. */
public final class Measuring {
    private Measuring() {}

    /** Measures the whole job: walls, drains, mains, roof lines, outlets, then the balance of soil. */
    public static Takeoff of(Job job, PriceBook book) {
        List<TakeoffSection> sections = sections(job);
        List<Driven> measured = new ArrayList<>();
        Trenches trenches = new Trenches(job, book);
        TopsoilShare topsoil = TopsoilShare.of(job);
        for (Wall wall : job.walls()) {
            measured.addAll(WallTakeoff.of(job, book, trenches, topsoil, wall, section(sections, wall.label())));
        }
        TakeoffSection drain = section(sections, Section.DRAIN.label());
        TakeoffSection roof = section(sections, Section.ROOF_WATER.label());
        for (FootingDrain run : job.water().drains()) {
            measured.addAll(DrainTakeoff.of(job, book, run, drain));
            measured.addAll(RunTakeoff.lead(job, book, run, topsoil, drain));
        }
        for (SolidRun main : job.water().mains()) {
            measured.addAll(RunTakeoff.main(job, book, main, topsoil, drain));
        }
        for (SolidRun line : job.water().roofLines()) {
            measured.addAll(RunTakeoff.roofLine(job, book, line, topsoil, roof));
        }
        for (Outlet outlet : job.water().outlets()) {
            measured.addAll(RunTakeoff.outlet(job, book, outlet, topsoil, isForRoofOnly(job, outlet) ? roof : drain));
        }
        for (TestPit pit : job.site().testPits()) {
            measured.addAll(RunTakeoff.testPit(job, pit, drain));
        }
        measured.addAll(GroundTakeoff.of(job, book, measured, topsoil, section(sections, Section.GROUND.label())));
        measured.addAll(setup(section(sections, Section.SETUP.label())));
        List<TakeoffLine> lines = LineChoice.lines(job, book, measured, sections);
        List<Quantity> quantities = measured.stream().map(Driven::quantity).toList();
        return new Takeoff(sections, quantities, lines, Ordering.purchases(book, lines));
    }

    private static boolean isForRoofOnly(Job job, Outlet outlet) {
        boolean takesDrain =
                job.water().drains().stream().anyMatch(d -> d.into().equals(outlet.label()))
                        || job.water().mains().stream().anyMatch(m -> m.into().equals(outlet.label()));
        return !takesDrain;
    }

    private static List<Driven> setup(TakeoffSection section) {
        QuantityCollector collector = new QuantityCollector(section, "whole job", List.of());
        Given one = Given.of("x", "job", 1, Unit.EACH, "the job");
        collector.add(Measure.JOB, QuantityCollector.counted(Measure.JOB, 1, "x", "once", one));
        return collector.found();
    }

    private static List<TakeoffSection> sections(Job job) {
        List<TakeoffSection> sections = new ArrayList<>();
        for (Wall wall : job.walls()) {
            sections.add(new TakeoffSection(Section.WALL, wall.label(), "Wall " + wall.label() + ", " + wall.where()));
        }
        for (Section kind : Section.values()) {
            if (kind != Section.WALL) {
                sections.add(new TakeoffSection(kind, kind.label(), kind.heading()));
            }
        }
        return sections;
    }

    private static TakeoffSection section(List<TakeoffSection> sections, String label) {
        return sections.stream()
                .filter(section -> section.label().equals(label))
                .findFirst()
                .orElseThrow();
    }
}
