// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.Optional;

/**
 * The contractor as the papers name it.
 *
 * @param logo the logo as a data address, ready for the page
 */
public record Firm(
        String name,
        String licenseLabel,
        String licenseNumber,
        String insurance,
        String address,
        String phone,
        String email,
        Optional<String> logo,
        boolean a4) {

    /** The same with its logo. */
    public Firm withLogo(String data) {
        return new Firm(name, licenseLabel, licenseNumber, insurance, address, phone, email, Optional.of(data), a4);
    }
}
