// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import spadework.contract.QuantityChange;
import spadework.measure.Figures;
import spadework.measure.Unit;
import spadework.paperwork.PaperWords;

/** Quantities that differ between two jobs, as the papers list them. */
public final class QuantityChangeRows {
    private QuantityChangeRows() {}

    /** Every one, the homeowner's words first where there are some. */
    public static List<QuantityChangeRow> all(List<QuantityChange> changes, PaperWords terms) {
        return changes.stream().map(change -> move(change, terms)).toList();
    }

    /** Those that a homeowner understands. */
    public static List<QuantityChangeRow> plain(List<QuantityChange> changes, PaperWords terms) {
        return all(changes, terms).stream().filter(QuantityChangeRow::plain).toList();
    }

    /** What is counted needs no unit. */
    private static String text(BigDecimal value, Unit unit) {
        return unit == Unit.EACH || unit == Unit.LOAD ? Figures.inWorking(value) : Figures.withUnit(value, unit);
    }

    private static QuantityChangeRow move(QuantityChange change, PaperWords terms) {
        Optional<String> words =
                terms.find("moved." + PaperWords.key(change.measure().trade()));
        BigDecimal difference = change.difference();
        return new QuantityChangeRow(
                words.orElse(change.description()),
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
