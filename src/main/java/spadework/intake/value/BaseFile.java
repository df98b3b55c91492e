// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.Optional;
import java.util.function.Function;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.ValueKind;

/**
 * What a file starts from that only changes another: a value that it leaves out is the other's.
 *
 * @param whole the other; empty where the file stands alone and has to say everything
 */
public record BaseFile<B>(Optional<B> whole) {

    public static <B> BaseFile<B> none() {
        return new BaseFile<>(Optional.empty());
    }

    public static <B> BaseFile<B> of(B whole) {
        return new BaseFile<>(Optional.of(whole));
    }

    /** A value of the file, else that of what it starts from; left out without one it is a fault. */
    public <T> T value(ObjectFields fields, String key, ValueKind<T> kind, Function<B, T> before) {
        return whole.map(before).map(other -> fields.get(key, kind, other)).orElseGet(() -> fields.get(key, kind));
    }

    /** Something of what the file starts from; without it the given. */
    public <T> T orElse(Function<B, T> before, T none) {
        return whole.map(before).orElse(none);
    }
}
