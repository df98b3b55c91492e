package spadework.office;

import java.nio.file.Path;
import java.util.List;
import spadework.finding.Fault;

/** What came of an order for documents. */
public sealed interface Outcome {

    /** The files that were written. */
    record Printed(List<Path> files) implements Outcome {}

    /** The job file is at fault; nothing was written. */
    record Faulty(List<Fault> faults) implements Outcome {}

    /** Stops are open; nothing was written. Each is told in words. */
    record Stopped(List<String> stops) implements Outcome {}
}
