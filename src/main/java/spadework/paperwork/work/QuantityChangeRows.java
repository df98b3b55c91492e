// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import spadework.contract.QuantityChange;
import spadework.measure.Figures;
import spadework.measure.Unit;
import spadework.paperwork.PaperWords;
import spadework.pricebook.Measure;

/** Quantities that differ between two jobs, as the papers list them. */
public final class QuantityChangeRows {
    private QuantityChangeRows() {}

    /** What is part of the soil dug at a place, whoever digs it and whereto. */
    private static final Set<Measure> DIGGING =
            EnumSet.of(Measure.DIG_MACHINE, Measure.DIG_WALL_SIDE, Measure.DIG_BULK, Measure.DIG_HAND, Measure.SPOIL);

    /** Those of them that stand for the others where as much is dug as before. */
    private static final Set<Measure> BY_WHOM = EnumSet.of(Measure.DIG_MACHINE, Measure.DIG_HAND);

    /**
     * Every one that can be measured, the homeowner's words first where there are some; soil that is dug stands once
     * for each place. Days are none of them: those of a change are agreed, and the paper says them once.
     */
    public static List<QuantityChangeRow> all(List<QuantityChange> changes, PaperWords terms) {
        return without(changes).stream().map(change -> move(change, terms)).toList();
    }

    private static List<QuantityChange> without(List<QuantityChange> changes) {
        Set<String> dug = changes.stream()
                .filter(change -> change.measure() == Measure.DUG)
                .map(QuantityChange::label)
                .collect(Collectors.toSet());
        return changes.stream()
                .filter(change -> !change.measure().isByDays())
                .filter(change -> !DIGGING.contains(change.measure())
                        || (BY_WHOM.contains(change.measure()) && !dug.contains(change.label())))
                .toList();
    }

    /** Those that a homeowner understands; soil that is dug once for all walls together. */
    public static List<QuantityChangeRow> plain(List<QuantityChange> changes, PaperWords terms) {
        return together(without(changes)).stream()
                .map(change -> move(change, terms))
                .filter(QuantityChangeRow::plain)
                .toList();
    }

    private static List<QuantityChange> together(List<QuantityChange> changes) {
        List<QuantityChange> dug = changes.stream()
                .filter(change -> change.measure() == Measure.DUG)
                .toList();
        if (dug.size() < 2) {
            return changes;
        }
        QuantityChange first = dug.get(0);
        QuantityChange sum = new QuantityChange(
                first.id(),
                first.measure(),
                "",
                first.description(),
                first.unit(),
                dug.stream().map(QuantityChange::before).reduce(BigDecimal.ZERO, BigDecimal::add),
                dug.stream().map(QuantityChange::after).reduce(BigDecimal.ZERO, BigDecimal::add));
        return changes.stream()
                .filter(change -> change.measure() != Measure.DUG || change.equals(first))
                .map(change -> change.equals(first) ? sum : change)
                .toList();
    }

    /** What is counted needs no unit. */
    private static String text(BigDecimal value, Unit unit) {
        return unit == Unit.EACH || unit == Unit.LOAD ? Figures.inWorking(value) : Figures.withUnit(value, unit);
    }

    private static QuantityChangeRow move(QuantityChange change, PaperWords terms) {
        Optional<String> words =
                terms.find("moved." + PaperWords.key(change.measure().trade()));
        String measured = terms.find(
                        "measured." + PaperWords.key(change.measure().trade()))
                .orElse(change.description());
        BigDecimal difference = change.difference();
        return new QuantityChangeRow(
                words.orElse(measured),
                words.isPresent(),
                change.label(),
                change.unit().symbol(),
                change.before(),
                change.after(),
                text(change.before(), change.unit()),
                text(change.after(), change.unit()),
                (difference.signum() > 0 ? "+" : "") + text(difference, change.unit()),
                Figures.withUnit(change.after(), change.unit()));
    }
}
