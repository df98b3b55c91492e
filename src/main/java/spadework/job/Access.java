// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** What can reach the wall to dig. */
public enum Access {
    MACHINE,
    HAND
}
