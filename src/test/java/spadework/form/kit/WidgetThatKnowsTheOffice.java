// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import spadework.office.Office;

/** A widget that asks the office itself, for the test that it is reported. */
public record WidgetThatKnowsTheOffice(Office office) {}
