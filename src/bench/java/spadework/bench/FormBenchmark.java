// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
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
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import spadework.draft.Draft;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.PaperKind;
import spadework.office.reply.TemplateFolder;
import spadework.press.page.PageView;

/** What the form waits for: a keystroke to the new total, and a changed page to its picture. Read p0.50 and p0.99. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class FormBenchmark {
    /** A pane beside the form at 1366 × 768: pixels a point of a letter page. */
    private static final double SCALE = 0.82;

    @Param({"block-basement-to-swale", "refused-type-a-and-no-fall", "added-wall-then-closed"})
    public String sample;

    private final Office office = Office.with(TemplateFolder.NONE);
    private Path file;
    private Draft draft;
    private int stroke;

    @Setup
    public void open() throws IOException {
        file = Path.of("sample-quotes", sample, "job.json");
        draft = Draft.read(Files.readString(file)).orElseThrow();
        office.prepare();
    }

    /** The next key of a wall's length: the draft, its text, the job, takeoff, checks, price. */
    @Benchmark
    public Object keystrokeToTotal() {
        return typed().total();
    }

    /** The same, and the first page of the proposal set anew and drawn. */
    @Benchmark
    public BufferedImage changedPage() {
        try (PageView view = PageView.of(office.page(typed(), PaperKind.PROPOSAL))) {
            return view.picture(0, SCALE);
        }
    }

    private Bid typed() {
        stroke = (stroke + 1) % 10;
        return (Bid) office.bid(
                draft.typed("/walls/0/length", "24." + stroke + " ft").text(), file);
    }
}
