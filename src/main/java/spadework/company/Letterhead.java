// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.util.List;
import java.util.Optional;

/**
 * How the company's papers look.
 *
 * @param logo file name of a PNG or JPEG beside the company file
 * @param payTo how to pay, one line each, as bills print it: who a check is for, which account takes a transfer
 */
public record Letterhead(Optional<String> logo, Paper paper, List<String> payTo) {

    public Letterhead {
        payTo = List.copyOf(payTo);
    }
}
