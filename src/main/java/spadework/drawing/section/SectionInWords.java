// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.util.StringJoiner;
import java.util.stream.Collectors;
import spadework.measure.Length;
import spadework.takeoff.CrossSection;
import spadework.wording.Wording;

/** A section for whoever cannot see it: the same things and the same figures in sentences. */
public final class SectionInWords {
    private static final Wording WORDS = Wording.beside(SectionInWords.class);

    private SectionInWords() {}

    static String of(CrossSection section, WallCovering covering) {
        StringJoiner text = new StringJoiner(" ");
        text.add(WORDS.get("section-in-words.section-through-trench-at", SectionWords.walls(section.walls())));
        text.add(WORDS.get(
                "section-in-words.from-grade-to-top",
                section.depth().text(),
                section.trenchDepth().text()));
        text.add(SectionWords.footing(section.footing()) + ".");
        section.floor()
                .ifPresentOrElse(
                        floor -> text.add(WORDS.get("section-in-words.floor-inside-lies", over(floor))),
                        () -> text.add(WORDS.get("section-in-words.floor-inside-not-drawn")));
        text.add(WORDS.get("section-in-words.wall-covered-from-footing", covering.material(), covering.promise()));
        text.add(WORDS.get(
                "section-in-words.bottom-trench-wide-beside",
                section.bottomWidth().text()));
        text.add(bank(section));
        text.add(
                section.noSoilOn().isPresent()
                        ? WORDS.get("section-in-words.no-soil")
                        : WORDS.get("section-in-words.soil-heaped", SectionWords.SPOIL_BACK));
        if (!section.beside().isEmpty()) {
            text.add(WORDS.get(
                    "section-in-words.beside",
                    section.beside().stream().map(SectionWords::beside).collect(Collectors.joining("; "))));
        }
        section.bed().ifPresentOrElse(bed -> text.add(bed(bed)), () -> text.add(SectionWords.NO_DRAIN + "."));
        text.add(WORDS.get("section-in-words.above-trench-filled-and"));
        return text.toString();
    }

    private static String over(Length floor) {
        double feet = floor.feet();
        return feet < 0 ? Length.ofFeet(-feet).text() + " below the bottom" : floor.text() + " above the bottom";
    }

    private static String bank(CrossSection section) {
        String inTheWay = SectionWords.inTheWay(section.bank());
        return WORDS.get(
                "section-in-words.bank",
                SectionWords.bank(section.bank()),
                SectionWords.soil(section.bank()),
                SectionWords.engineer(section.trenchDepth()),
                inTheWay.isEmpty() ? "" : "; " + inTheWay,
                section.reach().text());
    }

    private static String bed(CrossSection.Bed bed) {
        return WORDS.get(
                "section-in-words.bed",
                SectionWords.stone(bed.stone().text()),
                lower(SectionWords.pipe(bed.pipeOutside(), bed.bedding())),
                lower(SectionWords.FABRIC));
    }

    private static String lower(String text) {
        return text.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
