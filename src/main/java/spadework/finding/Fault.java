// SPDX-License-Identifier: Apache-2.0
package spadework.finding;

/**
 * Input that cannot be used: one clear message a fault.
 *
 * @param place where it stands
 * @param found what was found there
 * @param allowed what is allowed
 * @param fix how to fix it
 */
public record Fault(Place place, String found, String allowed, String fix) {

    /** The whole message on one line. */
    public String text() {
        return place.text() + ": found " + found + "; allowed: " + allowed + "; fix: " + fix;
    }
}
