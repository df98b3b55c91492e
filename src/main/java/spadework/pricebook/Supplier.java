// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

/**
 * Where the material of an item is bought.
 *
 * @param name of the supplier; blank where nobody said
 * @param number the supplier's own number of it; blank where there is none
 * @param leadDays working days from order to delivery, from 0
 */
public record Supplier(String name, String number, int leadDays) {
    /** Nobody said. */
    public static final Supplier UNKNOWN = new Supplier("", "", 0);

    public boolean isKnown() {
        return !name.isEmpty();
    }
}
