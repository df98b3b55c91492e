// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import spadework.form.kit.Messages;

/** Where a job stops on its way from the first visit to the end of the work. */
public enum JobStop {
    VISIT,
    PRICE,
    PAPERS,
    AGREEMENT,
    FINISH;

    /** The word that stands for it in names of controls and keys of words. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String title() {
        return Messages.of("stop." + word());
    }

    /** The keys that lead to it. */
    public String keys() {
        return "alt " + (ordinal() + 1);
    }

    /** Its pages, in their order. */
    public List<JobPage> pages() {
        return Arrays.stream(JobPage.values())
                .filter(page -> page.stop() == this)
                .toList();
    }
}
