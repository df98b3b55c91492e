package spadework.paperwork;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import spadework.measure.Figures;
import spadework.takeoff.Quantity;
import spadework.working.Worked;
import spadework.working.Working;

/** Quantities as printed, with their workings. */
final class Measurements {
    private Measurements() {}

    static Measured of(Quantity quantity) {
        Working working = quantity.working();
        Set<String> inputs = new LinkedHashSet<>();
        gather(working, inputs);
        return new Measured(
                quantity.id(),
                quantity.section().name(),
                quantity.description(),
                quantity.printed(),
                quantity.unit().symbol(),
                Figures.withUnit(quantity.value(), quantity.unit()),
                working instanceof Worked worked ? worked.line() : working.valueText(),
                String.join("; ", inputs),
                working.source());
    }

    static List<Measured> of(List<Quantity> quantities) {
        List<Measured> measured = new ArrayList<>();
        quantities.forEach(quantity -> measured.add(of(quantity)));
        return measured;
    }

    /** Every input below a working, each once: a given with its value, a worked one with its own formula. */
    private static void gather(Working working, Set<String> lines) {
        for (Working input : working.inputs()) {
            if (input instanceof Worked worked) {
                lines.add(worked.symbol() + " " + worked.name() + ": " + worked.line());
            } else {
                lines.add(input.symbol() + " " + input.name() + ": " + input.valueText());
            }
            gather(input, lines);
        }
    }
}
