// SPDX-License-Identifier: Apache-2.0
package spadework.cli.outcome;

import java.nio.file.Path;
import picocli.CommandLine;
import spadework.cli.option.ExitCode;
import spadework.office.Outcome;
import spadework.office.OutcomeText;

/** Tells what came of a step and answers its exit code. */
public final class OutcomeReport {
    private OutcomeReport() {}

    public static int of(Path job, Outcome outcome, CommandLine line) {
        return of(job, outcome, "nothing was done", line);
    }

    /** @param undone that nothing came of it */
    public static int of(Path job, Outcome outcome, String undone, CommandLine line) {
        OutcomeText text = OutcomeText.of(outcome, undone, "in acceptedStops");
        String indent = text.head().isEmpty() ? "" : "  ";
        if (text.done()) {
            if (!text.head().isEmpty()) {
                line.getOut().println(text.head());
            }
            text.lines().forEach(one -> line.getOut().println(indent + one));
            return ExitCode.DONE;
        }
        line.getErr().println(job + ": " + text.head());
        text.lines().forEach(one -> line.getErr().println(indent + one));
        return ExitCode.REFUSED;
    }
}
