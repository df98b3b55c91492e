// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

/**
 * A value that a job is priced with although nobody has written it yet.
 *
 * @param place where it belongs
 * @param value as it would be written there
 */
public record Assumption(String place, String value, Kind kind) {

    /** Who can say that it is so. */
    public enum Kind {
        /** The contractor decides it: a finish, a date, a title. */
        DECIDED,
        /** Somebody has to see or measure it at the house. */
        SEEN,
        /** Only a stand-in: the papers need the real words. */
        UNWRITTEN
    }
}
