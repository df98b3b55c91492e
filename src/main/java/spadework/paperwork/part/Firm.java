// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;

/**
 * The contractor as the papers name it.
 *
 * @param callName whom to ask for; empty where the company names nobody
 * @param callPhone where that person is reached, else the office's phone
 * @param logo the logo as a data address, ready for the page
 */
@RecordBuilder
public record Firm(
        String name,
        String licenseLabel,
        String licenseNumber,
        String insurance,
        String address,
        String phone,
        String email,
        String callName,
        String callPhone,
        Optional<String> logo,
        boolean a4)
        implements FirmBuilder.With {}
