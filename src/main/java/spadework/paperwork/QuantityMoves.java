package spadework.paperwork;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import spadework.contract.QuantityChange;
import spadework.measure.Figures;
import spadework.measure.Unit;

/** Quantities that differ between two jobs, as the papers list them. */
final class QuantityMoves {
    private QuantityMoves() {}

    /** Every one, the homeowner's words first where there are some. */
    static List<QuantityMove> all(List<QuantityChange> changes, Terms terms) {
        return changes.stream().map(change -> move(change, terms)).toList();
    }

    /** Those that a homeowner understands. */
    static List<QuantityMove> plain(List<QuantityChange> changes, Terms terms) {
        return all(changes, terms).stream().filter(QuantityMove::plain).toList();
    }

    /** What is counted needs no unit. */
    private static String text(BigDecimal value, Unit unit) {
        return unit == Unit.EACH || unit == Unit.LOAD ? Figures.inWorking(value) : Figures.withUnit(value, unit);
    }

    private static QuantityMove move(QuantityChange change, Terms terms) {
        Optional<String> words =
                terms.find("moved." + Terms.key(change.measure().trade()));
        BigDecimal difference = change.difference();
        return new QuantityMove(
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
