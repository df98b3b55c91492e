// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;

/**
 * The contractor as the papers name it.
 *
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
        Optional<String> logo,
        boolean a4)
        implements FirmBuilder.With {}
