// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** By what right somebody signs for an owner. */
public enum SigningRight {
    POWER_OF_ATTORNEY,
    TRUSTEE,
    EXECUTOR,
    GUARDIAN;

    /** As a person says it. */
    public String words() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
