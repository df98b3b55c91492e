// SPDX-License-Identifier: Apache-2.0
package spadework.cli.start;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import spadework.cli.option.ReplyCommand;
import spadework.office.reply.Reply;
import spadework.office.start.JobEdit;
import spadework.office.start.JobPart;

/** Add a part to a job. */
@Command(
        name = "add",
        description = {
            "Add a wall, a pipe, an option, a payment that came in, or what was built to a job.",
            "A wall is begun like the last one; what was seen of that one is not known of it."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework add wall jobs/2026-101 where=\"side wall\" faces=east length=\"26 ft\" depth=\"5 ft\"",
            "  spadework add payment jobs/2026-101 on=2026-10-02 amount='$1,200.00' how=check",
            "  spadework add as-built jobs/2026-101 started=2026-10-05 finished=2026-10-09 walls/A/length=\"40 ft\""
        })
public final class AddCommand extends ReplyCommand {
    @Parameters(
            index = "0",
            paramLabel = "PART",
            description = "wall, drain, main, roof-line, downspout, outlet, option, payment, as-built or flow-test.")
    private String part;

    @Parameters(index = "1", paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private Path job;

    @Parameters(
            index = "2..*",
            arity = "1..*",
            paramLabel = "WHAT=VALUE",
            description = "What the job file says of it, by its keys, as depth/start=\"4 ft 8 in\".")
    private Map<String, String> values = new LinkedHashMap<>();

    @Mixin
    private JobEditOptions options;

    @Override
    protected Reply reply() throws IOException {
        JobPart added =
                JobPart.of(part).orElseThrow(() -> new ParameterException(line(), part + ": allowed are " + parts()));
        return new JobEdit(options.office()).add(job, added, values);
    }

    private static String parts() {
        return Arrays.stream(JobPart.values()).map(JobPart::word).collect(Collectors.joining(", "));
    }
}
