// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.Optional;
import java.util.Set;
import spadework.money.Dollars;

/**
 * A notice that a law wants in a home contract.
 *
 * @param name what it is, as {@code lien law notice}
 * @param serves the required contents that it is: one prescribed notice may hold several
 * @param points least size of its type
 * @param wording what it says; empty where the prescribed wording was not gathered, which nobody may invent
 * @param prescribed whether the law prescribes the words, or only what they have to say
 * @param above the price above which it is due; empty where it is due at any price
 * @param when in which contracts it is due
 * @param status how far the rule was read
 */
public record LegalNotice(
        String name,
        Set<Content> serves,
        NoticePlace place,
        int points,
        boolean bold,
        boolean capitals,
        Optional<String> wording,
        boolean prescribed,
        Optional<Dollars> above,
        NoticeCase when,
        String status,
        String citation) {

    public LegalNotice {
        serves = Set.copyOf(serves);
    }

    /** Whether a contract of that price needs it. */
    public boolean isDue(Dollars price, boolean securedOnTheHome) {
        boolean dear = above.isEmpty() || above.get().isLessThan(price);
        return dear && (when != NoticeCase.SECURED_ON_THE_HOME || securedOnTheHome);
    }
}
