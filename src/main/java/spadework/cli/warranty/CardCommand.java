package spadework.cli.warranty;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spadework.cli.Answering;
import spadework.office.AfterCare;
import spadework.office.Told;

/** What the homeowner does and when. */
@Command(
        name = "card",
        description = "The homeowner's maintenance card: the certificate's duties, season by season to the last day.",
        footerHeading = "%nExample:%n",
        footer = "  spadework warranty card jobs/2026-014")
public final class CardCommand extends Answering {
    @Parameters(paramLabel = "JOB", description = "A job folder, or the job file in it.")
    private Path job;

    @Option(names = "--json", description = "Print it as JSON.")
    private boolean json;

    @Override
    protected Told told() throws IOException {
        return AfterCare.card(job, json);
    }
}
