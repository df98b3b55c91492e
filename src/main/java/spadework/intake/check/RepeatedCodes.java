// SPDX-License-Identifier: Apache-2.0
package spadework.intake.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spadework.intake.source.Excerpt;
import spadework.intake.source.SourceFile;
import spadework.job.Job;
import spadework.job.PriceChange;

/** What could be counted twice by naming it twice. */
public final class RepeatedCodes {
    private RepeatedCodes() {}

    static void check(Job job, SourceFile sheet) {
        List<String> changes =
                job.priceChanges().stream().map(PriceChange::code).toList();
        once(sheet, "/priceChanges", "/code", changes);
        for (int i = 0; i < job.walls().size(); i++) {
            once(sheet, "/walls/" + i + "/strip", "", job.walls().get(i).strip());
        }
        for (int i = 0; i < job.water().drains().size(); i++) {
            once(
                    sheet,
                    "/water/drains/" + i + "/along",
                    "",
                    job.water().drains().get(i).along());
        }
    }

    private static void once(SourceFile sheet, String list, String key, List<String> names) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            String pointer = list + "/" + i + key;
            if (sheet.isSound(pointer) && !seen.add(names.get(i))) {
                String found = Excerpt.quoted(names.get(i)) + " a second time";
                sheet.fault(pointer, found, "each once in the list", "keep one of the two");
            }
        }
    }
}
