// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.finding.Finding;

/**
 * Where in the job a finding comes from. {@code causes.properties} names the place by the finding's id: a pointer, or
 * a key of the row that carries the label which the finding is about, written with an asterisk.
 */
public final class FindingPointers {
    private static final ResourceBundle PLACES = ResourceBundle.getBundle("spadework.form.causes", Locale.ROOT);
    private static final List<String> LABELED = List.of(
            "/walls",
            "/water/drains",
            "/water/mains",
            "/water/roofLines",
            "/water/downspouts",
            "/water/outlets",
            "/water/candidates",
            "/site/testPits");

    private FindingPointers() {}

    /** The place that a click on the finding leads to. */
    static String of(Finding finding, Draft draft) {
        String place = PLACES.containsKey(finding.id()) ? PLACES.getString(finding.id()) : "*";
        if (!place.startsWith("*")) {
            return place;
        }
        String row = row(draft, finding.about().replaceAll(", .*", ""));
        boolean run = row.startsWith("/water/mains/") || row.startsWith("/water/roofLines/");
        return place.startsWith("*/digging/") && !row.startsWith("/walls")
                ? row + (run ? "/trench/protection" : "/label")
                : row + place.substring(1);
    }

    /** The row of that label; the walls where nothing has it. */
    static String row(Draft draft, String label) {
        for (String list : LABELED) {
            for (int i = 0; i < draft.rows(list); i++) {
                if (draft.shown(Pointer.of(list, i) + "/label").equals(label)) {
                    return Pointer.of(list, i);
                }
            }
        }
        return draft.rows("/walls") > 0 ? "/walls/0" : "/walls";
    }
}
