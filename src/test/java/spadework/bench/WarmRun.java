package spadework.bench;

import java.io.IOException;
import java.util.Collection;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import spadework.press.PagePress;
import spadework.press.Templates;

/** The warm benchmarks, and what six pages cost by them. */
final class WarmRun {
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
                double cost = result.getPrimaryResult().getScore();
                System.out.println(String.format(
                        Locale.ROOT, "%-12s %2d pages %7.1f ms, six pages %5.1f ms", document, pages, cost, cost / pages * 6));
            }
        }
    }

    private static int pages(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return document.getNumberOfPages();
        }
    }
}
