// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.measure.Figures;
import spadework.paperwork.PaperWords;
import spadework.paperwork.SectionNames;
import spadework.takeoff.Quantity;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * Quantities as printed, with their workings. An input or a step that was shown at an earlier quantity of the same
 * section is not shown again: its letter stands for the same number there.
 */
public final class MeasuredRows {
    /** No words of a paper: all is called as the takeoff calls it. */
    private static final PaperWords NONE = new PaperWords(Map.of());

    private final Map<String, Set<String>> shown = new HashMap<>();

    private final PaperWords terms;

    private MeasuredRows(PaperWords terms) {
        this.terms = terms;
    }

    /** As the takeoff names them. */
    public static List<MeasuredRow> of(List<Quantity> quantities) {
        return rows(new MeasuredRows(NONE), quantities);
    }

    /** In the words of a paper. */
    public static List<MeasuredRow> of(List<Quantity> quantities, PaperWords terms) {
        return rows(new MeasuredRows(terms), quantities);
    }

    private static List<MeasuredRow> rows(MeasuredRows measurements, List<Quantity> quantities) {
        List<MeasuredRow> measured = new ArrayList<>();
        quantities.forEach(quantity -> measured.add(measurements.of(quantity)));
        return measured;
    }

    /** Other worked numbers under one heading: each with its working. */
    public static List<MeasuredRow> of(String heading, List<Named> numbers) {
        MeasuredRows measurements = new MeasuredRows(NONE);
        List<MeasuredRow> measured = new ArrayList<>();
        numbers.forEach(number -> measured.add(measurements.of(number.id(), heading, number.name(), number.working())));
        return measured;
    }

    /** A worked number with the name it is printed under. */
    public record Named(String id, String name, Working working) {}

    private MeasuredRow of(Quantity quantity) {
        return of(
                quantity.id(),
                SectionNames.of(terms, quantity.section().name()),
                described(quantity),
                quantity.working());
    }

    private MeasuredRow of(String id, String section, String description, Working working) {
        Set<String> lines = new LinkedHashSet<>();
        gather(working, lines);
        Set<String> before = shown.computeIfAbsent(section, heading -> new HashSet<>());
        List<String> fresh = lines.stream().filter(before::add).toList();
        String line = working instanceof Worked worked ? worked.line() : working.valueText();
        before.add(name(working) + line);
        return new MeasuredRow(
                id,
                section,
                description,
                Figures.printed(working.value(), working.unit()),
                terms.symbol(working.unit().symbol()),
                terms.measured(
                        Figures.withUnit(working.value(), working.unit()),
                        working.unit().symbol()),
                line,
                String.join("; ", fresh),
                working.source());
    }

    private String described(Quantity quantity) {
        return terms.find("measured." + PaperWords.key(quantity.measure().trade()))
                .map(name -> name + ", " + place(quantity.label()))
                .orElse(quantity.description());
    }

    /** Where it is measured: a label, {@code whole job}, or a part of what a label names, as {@code S1 pit}. */
    private String place(String label) {
        int part = label.lastIndexOf(' ');
        return terms.find("said." + PaperWords.key(label))
                .or(() -> part < 0
                        ? Optional.empty()
                        : terms.find("part." + label.substring(part + 1), "label", label.substring(0, part)))
                .orElse(label);
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
