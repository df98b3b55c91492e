// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import spadework.press.page.PagePress;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;

/** Each paper of the first sample, filled and printed by presses that are warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 12, time = 2)
@Measurement(iterations = 5, time = 2)
public class PressBenchmark {
    static final String SAMPLE = "block-basement-to-swale";

    @Param({"proposal", "scope", "certificate", "cost-sheet"})
    public String document;

    private final SampleSet sample = SampleSet.of(SAMPLE);
    private final Templates templates = Templates.bundled();
    private final PagePress press = new PagePress(templates);

    /** A tagged PDF. */
    @Benchmark
    public byte[] pages() {
        return press.print(document, sample.model(document), sample.info());
    }

    /** A workbook. */
    @Benchmark
    public byte[] workbook() {
        return WorkbookPress.print(
                templates, document, sample.model(document), sample.info().issued());
    }
}
