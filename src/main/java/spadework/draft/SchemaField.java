// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.List;
import java.util.Optional;

/**
 * What the format allows at a place.
 *
 * @param help what belongs there
 * @param choices the words it takes, for a choice
 * @param usual what is taken where the file is silent
 * @param example how a value is written there; its unit is the one that people leave out
 * @param needed whether the file may not be silent
 * @param keys of a group, in the order of the format
 * @param either true for a group that may also be written as its first value alone
 */
public record SchemaField(
        FieldKind kind,
        Help help,
        List<String> choices,
        Optional<String> usual,
        Optional<String> example,
        boolean needed,
        List<String> keys,
        boolean either) {

    /**
     * What belongs at a place.
     *
     * @param key by which other languages have it
     * @param english as the schema says it
     */
    public record Help(String key, String english) {}

    public SchemaField {
        choices = List.copyOf(choices);
        keys = List.copyOf(keys);
    }
}
