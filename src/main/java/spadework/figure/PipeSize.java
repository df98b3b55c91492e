// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.water.PipeConstants;
import spadework.water.flow.Flow;
import spadework.water.flow.FullPipe;
import spadework.water.flow.Manning;
import spadework.working.Formula;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** The pipe that a flow needs, and the next one that is sold. */
final class PipeSize {
    /** Nominal sizes in inches: ASTM F667-16(2021), scope (M-02). */
    private static final List<Integer> SIZES = List.of(3, 4, 5, 6, 8, 10, 12, 15, 18, 24);

    private static final String SIZES_SOURCE = "sizes of ASTM F667-16(2021), inside taken as nominal";

    /** Room for the last digit of a floating-point number where a size carries the flow exactly. */
    private static final double NOISE = 1e-12;

    private PipeSize() {}

    /** A size that is sold, with what its flow depends on. */
    private record Sold(Listed nominal, Listed inside, Working roughness) {

        FullPipe full(Working slope) {
            return Manning.full(inside, slope, roughness);
        }
    }

    /** Diameter for a flow in gpm, and the next size of the standard's list. */
    static Answer of(Working flow, Working slope, Working roughness) {
        return of(flow, slope, roughness, "pipe", sizes(roughness));
    }

    /** Diameter for a flow in gpm, and the next size of the kind. */
    static Answer of(Working flow, Working slope, PipeKind kind) {
        return of(flow, slope, PipeConstants.roughness(kind.sizes().get(0).pipe()), kind.name(), sizes(kind));
    }

    private static Answer of(Working flow, Working slope, Working roughness, String name, List<Sold> sizes) {
        Worked least = Manning.diameter(Flow.cfs("Qc", "flow", flow), slope, roughness);
        Worked inches = Worked.of(
                "d",
                "inside diameter that just carries it",
                least.number() * 12,
                Unit.INCH,
                new Formula("D × 12", "12 in a foot"),
                least);
        Optional<Sold> next = sizes.stream()
                .filter(size -> size.full(slope).gpm().number() >= flow.number() * (1 - NOISE))
                .findFirst();
        if (next.isEmpty()) {
            Listed largest = sizes.get(sizes.size() - 1).nominal();
            return Answer.of(inches)
                    .with(List.of(new Finding(
                            "no-size-sold",
                            Severity.MUST,
                            name,
                            Map.of("needed", text(inches), "largest", text(largest)),
                            largest.source())));
        }
        Worked gpm = next.get().full(slope).gpm();
        Worked carries = gpm.as("Qf", "what that size carries, full");
        return Answer.of(inches, next.get().nominal(), carries);
    }

    private static String text(Working inches) {
        return Figures.inAnswer(inches.value()) + " in";
    }

    private static List<Sold> sizes(Working roughness) {
        return SIZES.stream()
                .map(size -> sold(Length.ofInches(size), Length.ofInches(size), SIZES_SOURCE, roughness))
                .toList();
    }

    private static List<Sold> sizes(PipeKind kind) {
        return kind.sizes().stream()
                .map(PipeKind.Size::pipe)
                .map(pipe -> sold(pipe.nominal(), pipe.inside(), pipe.standard(), PipeConstants.roughness(pipe)))
                .toList();
    }

    private static Sold sold(Length nominal, Length inside, String source, Working roughness) {
        return new Sold(
                Listed.of("dn", "next size that is sold, nominal", nominal.inches(), Unit.INCH, source),
                Listed.of("Ds", "inside diameter of that size", inside.feet(), Unit.FOOT, source),
                roughness);
    }
}
