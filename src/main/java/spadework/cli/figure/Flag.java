// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.util.function.Predicate;
import spadework.measure.UnreadableMeasure;

/**
 * What a flag takes.
 *
 * @param reader reads the text
 * @param limits whether a value that was read is within its limits
 * @param range the limits in words
 * @param example a good value
 */
record Flag<T>(Reader<T> reader, Predicate<T> limits, String range, String example) {

    /** Reads a text or says what is wrong with it. */
    interface Reader<T> {
        T read(String text) throws UnreadableMeasure;
    }

    /** The value, within its limits. */
    T read(String text) throws UnreadableMeasure {
        T value = reader.read(text);
        if (!limits.test(value)) {
            throw new UnreadableMeasure(range, fix());
        }
        return value;
    }

    String fix() {
        return "write it as \"" + example + "\"";
    }

    /** The example as a value; it stands in while other flags are still looked at. */
    T standIn() {
        try {
            return read(example);
        } catch (UnreadableMeasure impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
