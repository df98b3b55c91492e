// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.List;
import java.util.Map;

/**
 * A workbook as a template describes it; {@link WorkbookReader} says how that is written.
 *
 * @param language as {@code en-US}
 * @param creator the firm
 * @param a4 true for A4, false for US Letter
 * @param styles by name
 */
public record WorkbookPlan(
        String title,
        String subject,
        String language,
        String creator,
        boolean a4,
        Footer footer,
        Map<String, SheetStyle> styles,
        List<SheetPlan> sheets) {

    /** What stands at the foot of every page; {@code {page}} and {@code {pages}} are filled in when it is printed. */
    public record Footer(String left, String center, String right) {}
}
