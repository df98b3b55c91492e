// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.nio.file.Path;
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
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.reply.TemplateFolder;

/** A job file read, measured, checked and priced by an office that is warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class BidBenchmark {
    @Param({
        "block-basement-to-swale",
        "poured-basement-with-sump",
        "crawl-space-between-houses",
        "stone-wall-engineer-first"
    })
    public String sample;

    private final Office office = Office.with(TemplateFolder.NONE);

    @Benchmark
    public BidResult bid() {
        return office.bid(Path.of("sample-quotes", sample));
    }
}
