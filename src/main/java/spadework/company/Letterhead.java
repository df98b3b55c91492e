// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.util.Optional;

/**
 * How the company's papers look.
 *
 * @param logo file name of a PNG or JPEG beside the company file
 */
public record Letterhead(Optional<String> logo, Paper paper) {}
