// SPDX-License-Identifier: Apache-2.0
package spadework.closeout;

import java.util.Optional;

/**
 * Whether a job may be closed with money still owed.
 *
 * @param reason why the balance is let go; empty where it is not
 */
public record BalanceWaiver(Optional<String> reason) {
    public static final BalanceWaiver NONE = new BalanceWaiver(Optional.empty());

    public static BalanceWaiver because(String reason) {
        return new BalanceWaiver(Optional.of(reason));
    }
}
