// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;

/** The warm benchmarks, and what six pages cost by them. */
final class WarmRun {
    private static final int WARM_UP = 150;
    private static final int TIMES = 51;

    private WarmRun() {}

    /** Argument: a pattern of benchmark names (default all). */
    public static void main(String[] arguments) throws RunnerException, IOException {
        String which = arguments.length > 0 ? arguments[0] : "spadework.bench";
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(which)
                        .jvmArgsAppend("-Xmx256m")
                        .shouldFailOnError(true)
                        .build())
                .run();
        SampleSet sample = SampleSet.of(PressBenchmark.SAMPLE);
        PagePress press = new PagePress(Templates.bundled());
        for (RunResult result : results) {
            if (result.getParams().getBenchmark().endsWith(".pages")) {
                String document = result.getParams().getParam("document");
                int pages = pages(press.print(document, sample.model(document), sample.info()));
                double clock = result.getPrimaryResult().getScore();
                double cpu = cpu(() -> press.print(document, sample.model(document), sample.info()));
                System.out.println(String.format(
                        Locale.ROOT,
                        "%-12s %2d pages %7.1f ms; six pages %6.1f ms by the clock, %6.1f ms of the processor",
                        document,
                        pages,
                        clock,
                        clock / pages * 6,
                        cpu / pages * 6));
            }
        }
    }

    /** Median milliseconds of this thread's own work, which other programs on the machine do not stretch much. */
    private static double cpu(Runnable print) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double[] took = new double[TIMES];
        for (int i = -WARM_UP; i < TIMES; i++) {
            long start = threads.getCurrentThreadCpuTime();
            print.run();
            if (i >= 0) {
                took[i] = (threads.getCurrentThreadCpuTime() - start) / 1e6;
            }
        }
        Arrays.sort(took);
        return took[TIMES / 2];
    }

    private static int pages(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return document.getNumberOfPages();
        }
    }
}
