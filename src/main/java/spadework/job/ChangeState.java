// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** Where a change order stands. Only an accepted one moves the contract price. */
public enum ChangeState {
    PENDING,
    ACCEPTED,
    DECLINED
}
