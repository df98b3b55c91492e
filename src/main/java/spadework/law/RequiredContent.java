// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.Optional;
import spadework.money.Dollars;

/**
 * A content that a state's law asks for.
 *
 * @param asks what the law asks, in own words
 * @param status how far it was read: {@code R} read, {@code RX} excerpt, {@code RS} secondary source, {@code M} memory
 * @param changesOver what change orders add before the law asks for it a second time; empty where it asks once
 */
public record RequiredContent(Content content, String asks, String status, Optional<Dollars> changesOver) {

    /** One that the contract alone has to hold. */
    public RequiredContent(Content content, String asks, String status) {
        this(content, asks, status, Optional.empty());
    }
}
