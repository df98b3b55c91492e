// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** What is on the wall's outer face before the work. */
public enum Surface {
    BARE,
    COATED,
    PARGED,
    PAINTED,
    UNKNOWN
}
