// SPDX-License-Identifier: Apache-2.0
package spadework.law;

/** When a notice is due. */
public enum NoticeCase {
    ALWAYS,
    /** Only where the contract gives a claim on the home. */
    SECURED_ON_THE_HOME,
    /** In each contract, and again on each change order. */
    ALSO_ON_CHANGE_ORDERS
}
