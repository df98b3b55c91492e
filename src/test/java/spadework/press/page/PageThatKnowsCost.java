// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import spadework.pricing.Quote;

/** A page that is handed a priced job, for the test that it is reported. */
public record PageThatKnowsCost(Quote quote) {}
