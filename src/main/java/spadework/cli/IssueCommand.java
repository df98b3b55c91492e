package spadework.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spadework.office.Issuing;
import spadework.office.Office;

/** Issues a proposal. */
@Command(
        name = "issue",
        description =
                "Issue the proposal with its specimen warranty: number, revision, what changed since the last one.",
        footerHeading = "%nExample:%n",
        footer = "  spadework issue jobs/2026-014")
final class IssueCommand implements Callable<Integer> {
    @Parameters(paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private Path job;

    @Mixin
    private JobArguments arguments;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        return Told.of(job, new Issuing(Office.with(arguments.templates())).issue(job), spec.commandLine());
    }
}
