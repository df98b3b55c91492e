package spadework.cli;

import java.nio.file.Path;
import picocli.CommandLine;
import spadework.cli.option.ExitCode;
import spadework.office.Outcome;

/** Tells what came of a step and answers its exit code. */
final class OutcomeReport {
    private OutcomeReport() {}

    static int of(Path job, Outcome outcome, CommandLine line) {
        if (outcome instanceof Outcome.Issued issued) {
            line.getOut().println(issued.number());
            issued.files().forEach(file -> line.getOut().println("  " + file));
            return ExitCode.DONE;
        }
        if (outcome instanceof Outcome.Standing standing) {
            line.getOut().println(standing.number() + " stands: nothing has changed since.");
            return ExitCode.DONE;
        }
        if (outcome instanceof Outcome.Printed printed) {
            printed.files().forEach(file -> line.getOut().println(file));
            return ExitCode.DONE;
        }
        if (outcome instanceof Outcome.Faulty faulty) {
            line.getErr().println(job + ": nothing was done. " + faulty.faults().size() + " to mend:");
            faulty.faults().forEach(fault -> line.getErr().println("  " + fault.text()));
        }
        if (outcome instanceof Outcome.Stopped stopped) {
            line.getErr()
                    .println(job + ": nothing was done. Mend each stop, or write in acceptedStops who answers for it:");
            stopped.stops().forEach(stop -> line.getErr().println("  " + stop));
        }
        if (outcome instanceof Outcome.Refused refused) {
            line.getErr().println(job + ": nothing was done, for these reasons:");
            refused.reasons().forEach(reason -> line.getErr().println("  " + reason));
        }
        return ExitCode.REFUSED;
    }
}
