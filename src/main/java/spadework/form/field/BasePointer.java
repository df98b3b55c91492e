// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Where a group of fields stands in the job: always at the same place, or at the row that is chosen in a table.
 *
 * @param format the place as the format has it, with {@code 0} for each row
 * @param place the place now; nowhere while no row is chosen
 */
public record BasePointer(String format, Supplier<Optional<String>> place) {
    public static final BasePointer JOB = new BasePointer("", () -> Optional.of(""));

    /** The place of a key in this group; an empty key stands for the place itself. */
    Optional<String> at(String key) {
        return place.get().map(pointer -> pointer + key);
    }

    /** The same as the format has it. */
    public String format(String key) {
        return format + key;
    }

    /** A group inside this one. */
    public BasePointer inside(String key) {
        return new BasePointer(format + key, () -> at(key));
    }
}
