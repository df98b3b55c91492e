// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/**
 * A postal address in the United States.
 *
 * @param state two-letter code, as {@code OH}
 */
public record Address(String street, String city, String state, String zip) {

    /** The address on one line. */
    public String text() {
        return street + ", " + city + ", " + state + " " + zip;
    }
}
