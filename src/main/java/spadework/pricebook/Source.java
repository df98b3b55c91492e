// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.time.LocalDate;

/** Who says so, and when. */
public record Source(String text, LocalDate on) {}
