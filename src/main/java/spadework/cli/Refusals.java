package spadework.cli;

import picocli.CommandLine;
import spadework.office.Refusal;

/** How a refused job is told. */
final class Refusals {
    private Refusals() {}

    static int print(Refusal refusal, boolean json, CommandLine line) {
        if (json) {
            line.getOut().println(refusal.listing());
        } else {
            refusal.faults().forEach(fault -> line.getErr().println(fault.text()));
        }
        return Spadework.REFUSED;
    }
}
