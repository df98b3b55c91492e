// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The job that a command is about. */
public final class JobParameter {
    @Parameters(index = "0", paramLabel = "JOB", description = "A job file, or the folder that holds its job.json.")
    private Path job;

    public Path path() {
        return job;
    }
}
