// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.List;
import java.util.stream.Stream;
import spadework.wording.Language;
import spadework.wording.Wording;

/**
 * What the competent person looks for at each trench (29 CFR 1926.651(k)(1), T-19). Page, workbook and log all take it
 * from here, so that nobody inspects less by filling in another one.
 *
 * @param hazards anything of which keeps people out
 * @param none what is ticked where there is none of them
 * @param guards what has to be there before anybody goes in
 */
public record DayForm(List<String> hazards, String none, List<String> guards) {
    private static final Wording WORDS = Wording.beside(DayForm.class);

    public DayForm {
        hazards = List.copyOf(hazards);
        guards = List.copyOf(guards);
    }

    /** The form in a language. */
    static DayForm in(Language language) {
        return new DayForm(
                Stream.of("cracks", "water", "bulge", "loose", "load", "air")
                        .map(hazard -> WORDS.in(language).get("hazard." + hazard))
                        .toList(),
                WORDS.in(language).get("hazard." + "none"),
                Stream.of("back", "ladder", "air", "protection", "marks")
                        .map(guard -> WORDS.in(language).get("guard." + guard))
                        .toList());
    }

    /** The hazards in a row. */
    String hazardsInARow() {
        return String.join(", ", hazards);
    }
}
