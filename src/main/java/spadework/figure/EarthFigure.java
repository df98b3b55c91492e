// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.measure.Volume;
import spadework.takeoff.EarthVolumes;
import spadework.working.Formula;
import spadework.working.Worked;
import spadework.working.Working;

/** The same soil in bank, loose and compacted, and the loads that haul it (E-08). */
public final class EarthFigure {
    private static final String SOURCE = "loose = bank × (1 + swell), compacted = bank × (1 − shrink) (E-08)";

    private EarthFigure() {}

    /**
     * The other volumes of the soil from one of them, and the truck loads of the loose one; from two of them the
     * swell or the shrink.
     *
     * @throws WrongInputs if what is given does not fix the volumes, or fixes them twice
     */
    public static Answer of(EarthInputs soil, BookFigures book) throws WrongInputs {
        Working truck = soil.load().map(BookFigures::truck).orElseGet(book::truck);
        Optional<Working> b = soil.bank().map(v -> yards("X", "soil, bank", v));
        Optional<Working> l = soil.loose().map(v -> yards("Y", "soil, loose", v));
        Optional<Working> c = soil.compacted().map(v -> yards("F", "soil, compacted", v));
        Optional<Working> w = soil.swell().map(v -> share("w", "swell, bank to loose", v));
        Optional<Working> k = soil.shrink().map(v -> share("k", "shrink, bank to compacted", v));
        int ways = (b.isPresent() ? 1 : 0)
                + (l.isPresent() && w.isPresent() ? 1 : 0)
                + (c.isPresent() && k.isPresent() ? 1 : 0);
        boolean tells = w.isPresent() || k.isPresent() || l.isPresent() || c.isPresent();
        if (ways != 1 || !tells) {
            throw wrong(ways);
        }
        Working lying = b.or(() -> l.filter(v -> w.isPresent()).map(v -> bankOfLoose(v, w.get())))
                .orElseGet(() -> bankOfCompacted(c.get(), k.get()));
        List<Working> found = new ArrayList<>(List.of(lying));
        if (w.isPresent() || l.isPresent()) {
            Working hauled = l.orElseGet(() -> Worked.of(
                    "Y",
                    "soil, loose",
                    EarthVolumes.loose(lying.number(), w.get().number()),
                    Unit.CUBIC_YARD,
                    new Formula("X × (1 + w)", SOURCE),
                    lying,
                    w.get()));
            found.add(hauled);
            if (w.isEmpty()) {
                found.add(swell(lying, hauled));
            }
            found.add(Worked.of(
                    "n",
                    "truck loads",
                    EarthVolumes.loads(hauled.number(), truck.number()),
                    Unit.LOAD,
                    new Formula("ceil(Y ÷ t)", "whole loads"),
                    hauled,
                    truck));
        }
        if (k.isPresent() || c.isPresent()) {
            Working filled = c.orElseGet(() -> Worked.of(
                    "F",
                    "soil, compacted",
                    EarthVolumes.compacted(lying.number(), k.get().number()),
                    Unit.CUBIC_YARD,
                    new Formula("X × (1 − k)", SOURCE),
                    lying,
                    k.get()));
            found.add(filled);
            if (k.isEmpty()) {
                found.add(shrink(lying, filled));
            }
        }
        return Answer.of(found);
    }

    private static Worked bankOfLoose(Working loose, Working swell) {
        return Worked.of(
                "X",
                "soil, bank",
                EarthVolumes.bankOf(loose.number(), swell.number()),
                Unit.CUBIC_YARD,
                new Formula("Y ÷ (1 + w)", SOURCE),
                loose,
                swell);
    }

    private static Worked bankOfCompacted(Working compacted, Working shrink) {
        return Worked.of(
                "X",
                "soil, bank",
                EarthVolumes.bankFor(compacted.number(), shrink.number()),
                Unit.CUBIC_YARD,
                new Formula("F ÷ (1 − k)", SOURCE),
                compacted,
                shrink);
    }

    private static Worked swell(Working bank, Working loose) {
        return Worked.of(
                "wp",
                "swell, bank to loose",
                EarthVolumes.swell(loose.number(), bank.number()) * 100,
                Unit.PERCENT,
                new Formula("(Y ÷ X − 1) × 100", SOURCE),
                loose,
                bank);
    }

    private static Worked shrink(Working bank, Working compacted) {
        return Worked.of(
                "kp",
                "shrink, bank to compacted",
                EarthVolumes.shrink(bank.number(), compacted.number()) * 100,
                Unit.PERCENT,
                new Formula("(1 − F ÷ X) × 100", SOURCE),
                compacted,
                bank);
    }

    private static Working yards(String symbol, String name, Volume volume) {
        return Inputs.given(symbol, name, volume.cubicYards(), Unit.CUBIC_YARD);
    }

    private static Working share(String symbol, String name, Percent percent) {
        return Inputs.given(symbol, name, percent.fraction().doubleValue(), Unit.NONE);
    }

    private static WrongInputs wrong(int ways) {
        return new WrongInputs(
                ways > 1 ? "the bank volume fixed twice" : "too little to work with",
                "--bank, or --loose with --swell, or --compacted with --shrink; and what is asked: --swell or --shrink,"
                        + " or a second volume to find it from",
                ways > 1 ? "leave one of them out" : "give for example --bank \"1000 cy\" --swell 30%");
    }
}
