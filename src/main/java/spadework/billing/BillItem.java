// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

/**
 * What can be billed once.
 *
 * @param number of the payment or of the change order, from 1
 */
public record BillItem(Kind kind, int number) {

    /** What a bill may ask for. */
    public enum Kind {
        /** A payment of the contract. */
        PAYMENT,
        /** What an accepted change order adds or takes away. */
        CHANGE
    }

    public static BillItem payment(int number) {
        return new BillItem(Kind.PAYMENT, number);
    }

    public static BillItem change(int number) {
        return new BillItem(Kind.CHANGE, number);
    }

    public boolean isPayment() {
        return kind == Kind.PAYMENT;
    }
}
