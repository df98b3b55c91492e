// SPDX-License-Identifier: Apache-2.0
package spadework.intake.book;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Counts;
import spadework.intake.value.Limits;
import spadework.intake.value.Measures;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;

/** Reads the size of a pipe. */
public final class PipeReader {
    private static final Set<Measure> PIPES =
            Set.of(Measure.DRAIN_PIPE, Measure.MAIN_PIPE, Measure.ROOF_PIPE, Measure.SUMP_DISCHARGE);

    private static final Limits<BigDecimal> MANNING =
            Limits.above(BigDecimal.ZERO, BigDecimal.ONE, BigDecimal::toPlainString);

    private PipeReader() {}

    /** The size of a line item's pipe: a pipe without it can be neither bedded in stone nor checked for flow. */
    static Optional<Pipe> find(ObjectFields fields, Measure follows) {
        Optional<Pipe> pipe = find(fields);
        SourceNode node = fields.node();
        if (pipe.isEmpty() && PIPES.contains(follows) && !node.isSilent()) {
            node.at("follows")
                    .fault(
                            "\"" + follows.trade() + "\" without \"pipe\"",
                            "a pipe with its size",
                            "add \"pipe\" with standard, diameters, manning and stick");
        }
        return pipe;
    }

    /** The size of a pipe that no measure drives, if it has one. */
    static Optional<Pipe> find(ObjectFields fields) {
        return fields.find("pipe", ValueKind.object(PipeReader::pipe));
    }

    private static Pipe pipe(ObjectFields fields) {
        Pipe pipe = new Pipe(
                fields.get("standard", Texts.TEXT),
                fields.get("nominal", Measures.lengthUpTo(3)),
                fields.get("outside", Measures.lengthUpTo(3)),
                fields.get("inside", Measures.lengthUpTo(3)),
                fields.get("manning", Counts.ratio(MANNING)).doubleValue(),
                fields.get("corrugated", Texts.YES_OR_NO),
                fields.get("stick", Measures.lengthUpTo(1000)));
        SourceNode inside = fields.node().at("inside");
        boolean sound = fields.node().sheet().isSound(fields.node().pointer());
        if (sound && !inside.isSilent() && pipe.inside().compareTo(pipe.outside()) >= 0) {
            inside.fault(inside.written(), "less than \"outside\"", "look the diameters up again");
        }
        return pipe;
    }
}
