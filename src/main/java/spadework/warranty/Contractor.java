// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

/**
 * Who gives the warranty.
 *
 * @param license label and number as printed; empty where there is none
 */
public record Contractor(String name, String address, String phone, String email, String license) {}
