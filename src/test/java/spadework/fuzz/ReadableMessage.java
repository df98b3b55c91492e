// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import java.util.List;
import java.util.regex.Pattern;
import spadework.finding.Fault;

/** What every answer to a spoiled file has to be: words for a person. */
final class ReadableMessage {
    /** The raw name of a failure in Java; a file may quote anything else. */
    private static final Pattern RAW = Pattern.compile("\\b[a-z]+\\.[a-z.]+\\.\\w*(?:Exception|Error)\\b");

    private ReadableMessage() {}

    static void hold(List<Fault> faults) {
        faults.forEach(ReadableMessage::hold);
    }

    static void hold(Fault fault) {
        if (!fault.found().equals("null")) { // A file may say null, and that is quoted.
            hold(fault.found());
        }
        hold(fault.allowed());
        hold(fault.fix());
        if (fault.place().file().isBlank()) {
            throw new AssertionError("no place: " + fault);
        }
    }

    static void hold(String message) {
        if (message == null
                || message.isBlank()
                || message.equals("null")
                || RAW.matcher(message).find()) {
            throw new AssertionError("no message for a person: " + message);
        }
    }
}
