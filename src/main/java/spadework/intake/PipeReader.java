package spadework.intake;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;

/** Reads the size of a pipe. */
final class PipeReader {
    private static final Set<Measure> PIPES =
            Set.of(Measure.DRAIN_PIPE, Measure.MAIN_PIPE, Measure.ROOF_PIPE, Measure.SUMP_DISCHARGE);

    private static final Limits<BigDecimal> MANNING =
            Limits.above(BigDecimal.ZERO, BigDecimal.ONE, BigDecimal::toPlainString);

    private PipeReader() {}

    /** The size of a line item's pipe: a pipe without it can be neither bedded in stone nor checked for flow. */
    static Optional<Pipe> find(Fields fields, Optional<Measure> follows) {
        Optional<Pipe> pipe = fields.find("pipe", Kind.object(PipeReader::pipe));
        Node node = fields.node();
        if (pipe.isEmpty() && follows.filter(PIPES::contains).isPresent() && !node.isSilent()) {
            node.at("follows")
                    .fault(
                            "\"" + follows.get().trade() + "\" without \"pipe\"",
                            "a pipe with its size",
                            "add \"pipe\" with standard, diameters, manning and stick");
        }
        return pipe;
    }

    private static Pipe pipe(Fields fields) {
        Pipe pipe = new Pipe(
                fields.get("standard", Texts.TEXT),
                fields.get("nominal", Measures.lengthUpTo(3)),
                fields.get("outside", Measures.lengthUpTo(3)),
                fields.get("inside", Measures.lengthUpTo(3)),
                fields.get("manning", Counts.ratio(MANNING)).doubleValue(),
                fields.get("corrugated", Texts.YES_OR_NO),
                fields.get("stick", Measures.lengthUpTo(1000)));
        Node inside = fields.node().at("inside");
        boolean sound = fields.node().sheet().isSound(fields.node().pointer());
        if (sound && !inside.isSilent() && pipe.inside().compareTo(pipe.outside()) >= 0) {
            inside.fault(inside.written(), "less than \"outside\"", "look the diameters up again");
        }
        return pipe;
    }
}
