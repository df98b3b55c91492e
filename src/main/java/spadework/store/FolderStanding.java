// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.util.List;
import java.util.Locale;
import spadework.register.Event;

/** Where a job stands, by its register alone. */
public enum FolderStanding {
    DRAFT,
    ISSUED,
    ACCEPTED,
    CLOSED,
    LOST,
    CANCELED;

    /** As it stands in tables. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** By its word. */
    public static FolderStanding ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** After these events, in their order. */
    static FolderStanding after(List<Event> events) {
        FolderStanding stands = DRAFT;
        for (Event event : events) {
            stands = switch (event) {
                case PROPOSAL_ISSUED -> ISSUED;
                case PROPOSAL_DECLINED -> LOST;
                case CONTRACT_SIGNED -> ACCEPTED;
                case CONTRACT_CANCELED -> CANCELED;
                case CERTIFICATE_ISSUED -> CLOSED;
                default -> stands;
            };
        }
        return stands;
    }
}
