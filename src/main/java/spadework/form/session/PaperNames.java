// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import spadework.form.kit.Messages;
import spadework.office.JobPaper;

/** What a paper is called in the window. */
public final class PaperNames {
    private PaperNames() {}

    public static String of(JobPaper paper) {
        String name = Messages.of("paper." + paper.paper().file());
        return paper.change()
                .map(number -> Messages.of("paper.numbered", name, number))
                .orElse(name);
    }
}
