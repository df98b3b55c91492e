// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.measure.UnreadableMeasure;

/** The flags of one command line, read one after another; what is wrong with them is kept until all are read. */
final class Flags {
    private final List<String> faults = new ArrayList<>();

    /** A flag that may be left out; a faulty one is noted and taken as left out. */
    <T> Optional<T> find(String name, String text, Flag<T> flag) {
        if (text == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(flag.read(text));
        } catch (UnreadableMeasure unreadable) {
            faults.add(message(name, "\"" + text + "\"", unreadable.allowed(), unreadable.fix()));
            return Optional.empty();
        }
    }

    /** A flag that is needed; a faulty or missing one is noted and a stand-in given. */
    <T> T get(String name, String text, Flag<T> flag) {
        if (text == null) {
            faults.add(message(name, "nothing", flag.range(), "add " + name + " \"" + flag.example() + "\""));
            return flag.standIn();
        }
        return find(name, text, flag).orElseGet(flag::standIn);
    }

    List<String> faults() {
        return List.copyOf(faults);
    }

    /** One fault on one line. */
    static String message(String name, String found, String allowed, String fix) {
        return name + ": found " + found + "; allowed: " + allowed + "; fix: " + fix;
    }
}
