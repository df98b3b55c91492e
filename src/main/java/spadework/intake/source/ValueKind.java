// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

import java.util.function.Function;

/**
 * How one kind of value is read from a file.
 *
 * @param example what to write, to fix a missing value; never a word that claims something was seen
 * @param reader makes the value; where the file is at fault it notes the fault and gives a stand-in, which never
 *     leaves this package because a reading with a fault is refused
 */
public record ValueKind<T>(String example, Function<SourceNode, T> reader) {

    public T read(SourceNode node) {
        return reader.apply(node);
    }

    /** An object whose keys the reader asks for; a key that nobody asked for is a fault. */
    public static <T> ValueKind<T> object(Function<ObjectFields, T> reader) {
        return new ValueKind<>("{…}", node -> {
            ObjectFields fields = node.fields();
            T value = reader.apply(fields);
            fields.done();
            return value;
        });
    }
}
