// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

/**
 * A duty of the owner.
 *
 * @param what in the words of the certificate
 * @param spring whether it is due in spring
 * @param fall whether it is due in fall
 */
public record CareDuty(String what, boolean spring, boolean fall) {}
