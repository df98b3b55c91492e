// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.measure.Area;
import spadework.measure.FlowRate;
import spadework.measure.Length;
import spadework.measure.RainRate;

/**
 * Builds one wall of 40 ft with its drain, main and outlet, and what a test adds. The ground at the wall lies at 97.50,
 * the footing's bottom at 91.83 and the floor at 93; everything is sound until a test spoils it.
 */
public final class WaterJob {
    private Double start = 92.6;
    private Double end = 92.2;
    private Double tee;
    private TeeAt teeAt = TeeAt.END;
    private Double startGrade = 97.5;
    private Double endGrade = 97.5;
    private String into = "M1";
    private Optional<String> mainItem = Optional.empty();
    private double mainLength = 40;
    private Double mainStart = 92.2;
    private Double mainEnd = 91.5;
    private Double mainStartGrade = 97.0;
    private Double mainEndGrade = 92.0;
    private OutletKind outlet = OutletKind.DAYLIGHT;
    private Double level = 91.0;
    private Double water = 90.5;
    private Double discharge;
    private SumpPit pit;
    private Texture texture = Texture.LOAM;
    private Seepage seepage = Seepage.NONE;
    private Double floor = 93.0;
    private Rain rain = new Rain(new RainRate(3), "test");
    private Catchment catchment;
    private final List<SolidRun> roofLines = new ArrayList<>();
    private final List<Downspout> downspouts = new ArrayList<>();
    private final List<OutletCandidate> candidates = new ArrayList<>();

    public WaterJob drain(Double from, Double to) {
        start = from;
        end = to;
        return this;
    }

    public WaterJob teeInMiddle(Double invert) {
        teeAt = TeeAt.MIDDLE;
        tee = invert;
        return this;
    }

    public WaterJob teeAt(TeeAt place) {
        teeAt = place;
        return this;
    }

    public WaterJob drainGrade(Double from, Double to) {
        startGrade = from;
        endGrade = to;
        return this;
    }

    public WaterJob main(double length, Double from, Double to) {
        mainLength = length;
        mainStart = from;
        mainEnd = to;
        return this;
    }

    public WaterJob mainItem(String code) {
        mainItem = Optional.of(code);
        return this;
    }

    public WaterJob mainGrade(Double from, Double to) {
        mainStartGrade = from;
        mainEndGrade = to;
        return this;
    }

    public WaterJob outlet(OutletKind kind, Double lies, Double highest) {
        outlet = kind;
        level = lies;
        water = highest;
        return this;
    }

    /** The drain runs straight into a sump; lengths in inches for the basin, in feet for the rest. */
    public WaterJob sump(Double diameter, Double depth, Double lift, Double length, Double flow, Double head) {
        outlet = OutletKind.SUMP;
        into = "O1";
        discharge = length;
        pit = new SumpPit(
                inches(diameter),
                inches(depth),
                feet(lift),
                Optional.ofNullable(flow).map(FlowRate::new),
                feet(head),
                PitPlace.INSIDE,
                Optional.empty(),
                Optional.empty());
        return this;
    }

    /** What was seen to come into the pit of a sump that was set before, gpm. */
    public WaterJob observed(double inflow) {
        pit = new SumpPit(
                pit.diameter(),
                pit.depth(),
                pit.lift(),
                pit.pumpFlow(),
                pit.pumpHead(),
                pit.place(),
                pit.fromFooting(),
                Optional.of(new FlowRate(inflow)));
        return this;
    }

    public WaterJob pitAt(PitPlace place) {
        pit = new SumpPit(
                pit.diameter(),
                pit.depth(),
                pit.lift(),
                pit.pumpFlow(),
                pit.pumpHead(),
                place,
                pit.fromFooting(),
                pit.observedInflow());
        return this;
    }

    public WaterJob seeping(Seepage seen) {
        seepage = seen;
        return this;
    }

    public WaterJob soil(Texture found) {
        texture = found;
        return this;
    }

    public WaterJob floor(Double lies) {
        floor = lies;
        return this;
    }

    public WaterJob rain(Double inchesAnHour) {
        rain = inchesAnHour == null ? null : new Rain(new RainRate(inchesAnHour), "test");
        return this;
    }

    public WaterJob uphill(double squareFeet, String runoff, String run) {
        catchment = new Catchment(Area.ofSquareFeet(squareFeet), new BigDecimal(runoff), run, "");
        return this;
    }

    public WaterJob roofLine(String label, double length, Double from, Double to, Double grade) {
        roofLines.add(new SolidRun(
                label,
                Length.ofFeet(length),
                Optional.empty(),
                new TrenchSize(Length.ofFeet(1), Length.ofFeet(2)),
                0,
                "O1",
                feet(from),
                feet(to),
                feet(grade),
                feet(grade),
                Optional.empty()));
        return this;
    }

    public WaterJob downspout(String label, double squareFeet, String run) {
        downspouts.add(new Downspout(label, Area.ofSquareFeet(squareFeet), run));
        return this;
    }

    public WaterJob candidate(String label, double distance, double lies) {
        candidates.add(new OutletCandidate(
                label, "ditch", Length.ofFeet(distance), Length.ofFeet(lies), Optional.empty(), ""));
        return this;
    }

    public Job build() {
        FootingDrain drain = new FootingDrain(
                "D1",
                List.of("A"),
                Optional.empty(),
                teeAt,
                into,
                feet(start),
                feet(end),
                feet(tee),
                feet(startGrade),
                feet(endGrade));
        SolidRun main = new SolidRun(
                "M1",
                Length.ofFeet(mainLength),
                mainItem,
                new TrenchSize(Length.ofFeet(1), Length.ofFeet(3)),
                0,
                "O1",
                feet(mainStart),
                feet(mainEnd),
                feet(mainStartGrade),
                feet(mainEndGrade),
                Optional.empty());
        Outlet place = new Outlet(
                "O1",
                outlet,
                "swale",
                feet(level),
                feet(40.0),
                feet(20.0),
                Optional.of("letter"),
                feet(discharge),
                feet(water),
                Optional.ofNullable(pit),
                Optional.empty());
        Water pipes = new Water(
                List.of(drain),
                into.equals("M1") ? List.of(main) : List.of(),
                roofLines,
                downspouts,
                List.of(place),
                candidates);
        return Jobs.job(site(), pipes, Jobs.wall());
    }

    private Site site() {
        Site s = Jobs.site();
        return new Site(
                s.address(),
                s.yearBuilt(),
                s.space(),
                s.house(),
                s.benchmark(),
                feet(floor),
                new Soil(texture, seepage, SoilType.B),
                Optional.ofNullable(rain),
                s.limits(),
                s.locateTicket(),
                Optional.ofNullable(catchment),
                List.of());
    }

    private static Optional<Length> feet(Double level) {
        return Optional.ofNullable(level).map(Length::ofFeet);
    }

    private static Optional<Length> inches(Double size) {
        return Optional.ofNullable(size).map(Length::ofInches);
    }
}
