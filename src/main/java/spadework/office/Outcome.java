// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.nio.file.Path;
import java.util.List;
import spadework.finding.Fault;

/** What came of an order for documents, or of a step of the agreement. */
public sealed interface Outcome {

    /** The files that were written. */
    record Printed(List<Path> files) implements Outcome {}

    /** The job file is at fault; nothing was written. */
    record Faulty(List<Fault> faults) implements Outcome {}

    /** Stops are open; nothing was written. Each is told in words. */
    record Stopped(List<String> stops) implements Outcome {}

    /** What was asked for had been done before; nothing was written. */
    record Standing(String number) implements Outcome {}

    /** It was done and registered under that number. */
    record Issued(String number, List<Path> files) implements Outcome {}

    /** One signature of several is in; the step is taken when the others are. */
    record Gathered(String number, List<String> by, List<String> missing) implements Outcome {}

    /** It cannot be done, for these reasons; nothing was written. */
    record Refused(List<String> reasons) implements Outcome {}
}
