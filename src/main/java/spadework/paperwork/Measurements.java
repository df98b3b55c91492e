package spadework.paperwork;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spadework.measure.Figures;
import spadework.takeoff.Quantity;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * Quantities as printed, with their workings. An input or a step that was shown at an earlier quantity of the same
 * section is not shown again: its letter stands for the same number there.
 */
final class Measurements {
    private final Map<String, Set<String>> shown = new HashMap<>();

    private Measurements() {}

    static List<Measured> of(List<Quantity> quantities) {
        Measurements measurements = new Measurements();
        List<Measured> measured = new ArrayList<>();
        quantities.forEach(quantity -> measured.add(measurements.of(quantity)));
        return measured;
    }

    private Measured of(Quantity quantity) {
        Working working = quantity.working();
        Set<String> lines = new LinkedHashSet<>();
        gather(working, lines);
        Set<String> before = shown.computeIfAbsent(quantity.section().name(), section -> new HashSet<>());
        List<String> fresh = lines.stream().filter(before::add).toList();
        String line = working instanceof Worked worked ? worked.line() : working.valueText();
        before.add(name(working) + line);
        return new Measured(
                quantity.id(),
                quantity.section().name(),
                quantity.description(),
                quantity.printed(),
                quantity.unit().symbol(),
                Figures.withUnit(quantity.value(), quantity.unit()),
                line,
                String.join("; ", fresh),
                working.source());
    }

    /** What a working needs, deepest first: a given with its value, a worked one with its own formula. */
    private static void gather(Working working, Set<String> lines) {
        for (Working input : working.inputs()) {
            gather(input, lines);
            lines.add(name(input) + (input instanceof Worked worked ? worked.line() : input.valueText()));
        }
    }

    private static String name(Working working) {
        return working.symbol() + " " + working.name() + ": ";
    }
}
