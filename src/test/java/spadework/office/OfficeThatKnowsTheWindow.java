// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import spadework.form.kit.NoticeBar;

/** A step of the office that knows the window, for the test that it is reported. */
public record OfficeThatKnowsTheWindow(NoticeBar shown) {}
