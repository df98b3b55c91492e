// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.List;
import spadework.wording.Language;
import spadework.wording.Wording;

/** The hold points of a job as the crew finds them on its sheet. */
public final class CrewHolds {
    private static final Wording WORDS = Wording.beside(CrewHolds.class);

    private CrewHolds() {}

    /**
     * Those of the scope, in its order.
     *
     * @param file name of the scope that lies beside the sheet
     */
    public static List<CrewHold> of(List<HoldStep> steps, String file, Language language) {
        Wording said = WORDS.in(language);
        return steps.stream().map(step -> of(step, file, said)).toList();
    }

    private static CrewHold of(HoldStep step, String file, Wording said) {
        boolean everywhere = step.wall().isEmpty();
        String page = step.page().isPresent() ? "#page=" + step.page().getAsInt() : "";
        return new CrewHold(
                step.wall(),
                everywhere
                        ? said.get("hold.everywhere", step.point())
                        : said.get("hold.at-wall", step.point(), step.wall()),
                said.get("hold.what-" + step.point()),
                file + page,
                said.get("hold.code", file + page),
                step.page().isPresent()
                        ? said.get("hold.step", step.step(), step.page().getAsInt())
                        : said.get("hold.step-alone", step.step()));
    }
}
