// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.Optional;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.SumpPit;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * A sump: basin, pump point and cycle.
 *
 * @param inflow what comes to it, gpm: the one range that pump, storage and cycle are sized by
 * @param needed what the pump has to deliver: the high end of the inflow with the factor, gpm
 * @param pump what it delivers: the chosen pump's flow, else {@code needed}
 * @param gallonsPerInch what an inch of the basin holds
 * @param storage gallons between start and stop of the pump
 * @param wanted gallons at which the pump starts no oftener than the published cycle
 * @param shortestCycle minutes from start to start at the inflow, within its range, at which they are fewest; empty
 *     when nothing flows in
 * @param head what the pipe asks for at {@code needed}; empty where lift or discharge pipe was not measured
 * @param pipe of the discharge
 */
public record SumpDesign(
        String label,
        Range inflow,
        Worked needed,
        Working pump,
        Worked gallonsPerInch,
        Worked storage,
        Worked wanted,
        Optional<Worked> shortestCycle,
        Optional<SumpHead> head,
        Pipe pipe) {
    /** The least basin of the code, IRC P3303.1.2 and IPC 1113.1.2 (F-33). */
    public static final Length LEAST_DIAMETER = Length.ofInches(18);

    /** The least depth of the basin, from the same place. */
    public static final Length LEAST_DEPTH = Length.ofInches(24);

    /** A hair of an inch: a size in feet and inches is not smaller by its last digit. */
    private static final double ROUNDING = 1e-6;

    /** Minutes from start to start below which a small motor wears (UFC 3-240-04A, 10 to 15 min under 20 hp; H-38). */
    public static final double CYCLE_MINUTES = 10;

    private static final String DIAMETER = "diameter of the basin";
    private static final String DEPTH = "depth of the basin";
    private static final String CODE = "least of IRC P3303.1.2, IPC 1113.1.2 (F-33)";
    private static final Listed FACTOR =
            Listed.of("f", "pump over inflow", 1.5, Unit.NONE, "published sump sizing rule (W-17)");

    /** Whether a basin is smaller than the code's least, to either side. */
    public static boolean isSmall(Length diameter, Length depth) {
        return diameter.inches() < LEAST_DIAMETER.inches() - ROUNDING
                || depth.inches() < LEAST_DEPTH.inches() - ROUNDING;
    }

    /**
     * The design of an outlet that is a sump; a basin that was not chosen is taken as the code's least.
     *
     * @param inflow what arrives at it, from the network
     */
    public static SumpDesign of(Job job, PriceBook book, Outlet outlet, Range inflow) {
        String at = "/water/outlets/" + job.water().outlets().indexOf(outlet);
        Optional<SumpPit> pit = outlet.pit();
        Pipe pipe = Pipes.discharge(book);
        Worked needed = pumpRate(inflow.high().as("Qi"));
        Working pump = pit.flatMap(SumpPit::pumpFlow)
                .<Working>map(flow -> Given.of(
                        "Qp",
                        "flow of the chosen pump",
                        flow.gallonsPerMinute(),
                        Unit.GALLON_PER_MINUTE,
                        at + "/pit/pumpFlow"))
                .orElse(needed);
        Working diameter = pit.flatMap(SumpPit::diameter)
                .<Working>map(chosen -> inches("d", DIAMETER, chosen, at + "/pit/diameter"))
                .orElseGet(() -> Listed.of("d", DIAMETER, LEAST_DIAMETER.inches(), Unit.INCH, CODE));
        Working depth = pit.flatMap(SumpPit::depth)
                .<Working>map(chosen -> inches("b", DEPTH, chosen, at + "/pit/depth"))
                .orElseGet(() -> Listed.of("b", DEPTH, LEAST_DEPTH.inches(), Unit.INCH, CODE));
        Worked perInch = gallonsPerInch(diameter);
        Worked storage = storage(perInch, depth);
        Optional<SumpHead> head = pit.flatMap(SumpPit::lift)
                .flatMap(lift -> outlet.discharge()
                        .filter(length -> needed.number() > 0)
                        .map(length -> SumpHead.of(
                                Given.of("hs", "lift", lift.feet(), Unit.FOOT, at + "/pit/lift"),
                                Given.of(
                                        "L",
                                        "length of the discharge pipe",
                                        length.feet(),
                                        Unit.FOOT,
                                        at + "/discharge"),
                                needed,
                                pipe)));
        return new SumpDesign(
                outlet.label(),
                inflow,
                needed,
                pump,
                perInch,
                storage,
                wanted(inflow.high().as("Qi"), pump),
                shortestCycle(storage, inflow.high().as("Qi"), pump),
                head,
                pipe);
    }

    /** What a pump has to deliver for an inflow in gpm, by the published factor 1.5. */
    public static Worked pumpRate(Working inflow) {
        return Worked.of(
                "Qp",
                "what the pump has to deliver",
                inflow.number() * FACTOR.number(),
                Unit.GALLON_PER_MINUTE,
                new Formula(inflow.symbol() + " × f", FACTOR.source()),
                inflow,
                FACTOR);
    }

    /** Gallons in an inch of a round basin of an inside diameter in inches (H-40). */
    public static Worked gallonsPerInch(Working diameter) {
        double d = diameter.number();
        return Worked.of(
                "g",
                "gallons in an inch of the basin",
                Math.PI * d * d / 4 / 231,
                Unit.GALLON_PER_INCH,
                new Formula("π × " + diameter.symbol() + "^2 ÷ 4 ÷ 231", "231 cubic inches in a gallon"),
                diameter);
    }

    /**
     * Gallons between start and stop at which a pump starts no oftener than the cycle at an inflow, t × q × (Qp − q) ÷
     * Qp; at half of the pump's flow that is t × Qp ÷ 4, which holds where no inflow is known (H-37, H-39).
     *
     * @param high the most that flows in, gpm
     * @param pump what the pump delivers, gpm, above 0
     */
    public static Worked wanted(Working high, Working pump) {
        if (!(high.number() > 0)) {
            return wanted(pump);
        }
        Worked q = oftenest(high, pump);
        double flow = pump.number();
        return Worked.of(
                "Vw",
                "storage for that cycle",
                CYCLE_MINUTES * q.number() * (flow - q.number()) / flow,
                Unit.GALLON,
                new Formula("t × q × (" + pump.symbol() + " − q) ÷ " + pump.symbol(), "10-States style (H-39)"),
                leastCycle(),
                q,
                pump);
    }

    private static Listed leastCycle() {
        return Listed.of("t", "least cycle", CYCLE_MINUTES, Unit.MINUTE, "UFC 3-240-04A, motor under 20 hp (H-38)");
    }

    private static Worked wanted(Working pump) {
        Listed cycle = leastCycle();
        return Worked.of(
                "Vw",
                "storage for that cycle",
                cycle.number() * pump.number() / 4,
                Unit.GALLON,
                new Formula("t × " + pump.symbol() + " ÷ 4", "UFC 3-240-04A Table 7-1 (H-37)"),
                cycle,
                pump);
    }

    private static Given inches(String symbol, String name, Length chosen, String pointer) {
        return Given.of(symbol, name, chosen.inches(), Unit.INCH, pointer);
    }

    /** Gallons between start and stop: half the depth of the basin in inches, times what an inch holds. */
    public static Worked storage(Worked perInch, Working depth) {
        Worked drawdown = Worked.of(
                "z",
                "inches between start and stop",
                depth.number() / 2,
                Unit.INCH,
                new Formula(depth.symbol() + " ÷ 2", "half the basin; common practice, no source"),
                depth);
        return Worked.of(
                "V",
                "storage between start and stop",
                perInch.number() * drawdown.number(),
                Unit.GALLON,
                new Formula("g × z", "gallons an inch times inches"),
                perInch,
                drawdown);
    }

    /**
     * Minutes from start to start. T = V ÷ q + V ÷ (Qp − q) is least at q = Qp ÷ 2; the inflow may not reach that
     * (H-39). Empty when nothing flows in.
     *
     * @param storage gallons between start and stop
     * @param high the most that flows in, gpm
     * @param pump what the pump delivers, gpm, above 0
     */
    public static Optional<Worked> shortestCycle(Worked storage, Working high, Working pump) {
        if (!(high.number() > 0)) {
            return Optional.empty();
        }
        Worked q = oftenest(high, pump);
        double minutes = storage.number() / q.number() + storage.number() / (pump.number() - q.number());
        return Optional.of(Worked.of(
                "T",
                "shortest cycle",
                minutes,
                Unit.MINUTE,
                new Formula("V ÷ q + V ÷ (" + pump.symbol() + " − q)", "10-States style (H-39)"),
                storage,
                q,
                pump));
    }

    private static Worked oftenest(Working high, Working pump) {
        return Worked.of(
                "q",
                "inflow at which the pump starts oftenest",
                Math.min(high.number(), pump.number() / 2),
                Unit.GALLON_PER_MINUTE,
                new Formula("min(" + high.symbol() + ", " + pump.symbol() + " ÷ 2)", "10-States style (H-39)"),
                high,
                pump);
    }
}
