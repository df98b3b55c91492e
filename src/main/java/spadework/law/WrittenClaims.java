// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.List;
import java.util.Optional;

/**
 * What a written warranty says of claims.
 *
 * @param steps how a claim is made, step by step
 * @param warrantor the warrantor's name
 * @param contact mailing address or toll-free telephone
 * @param dispute the informal way of settling disputes that the warrantor chose; empty where none was chosen
 * @param disputeChosen whether one was chosen
 */
public record WrittenClaims(
        List<String> steps, String warrantor, String contact, Optional<String> dispute, boolean disputeChosen) {

    public WrittenClaims {
        steps = List.copyOf(steps);
    }
}
