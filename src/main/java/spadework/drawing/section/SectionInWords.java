// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.util.StringJoiner;
import spadework.measure.Length;
import spadework.takeoff.CrossSection;

/** A section for whoever cannot see it: the same things and the same figures in sentences. */
public final class SectionInWords {
    private SectionInWords() {}

    static String of(CrossSection section, WallCovering covering) {
        StringJoiner text = new StringJoiner(" ");
        text.add("Section through the trench at " + SectionWords.walls(section.walls())
                + ", at the deeper end, to scale.");
        text.add("From grade to the top of the footing it is %s, to the bottom of the footing and of the trench %s."
                .formatted(section.depth().text(), section.trenchDepth().text()));
        text.add(SectionWords.footing(
                        section.footing().thickness().text(),
                        section.footing().projection().text()) + " from the wall.");
        section.floor()
                .ifPresentOrElse(
                        floor -> text.add("The floor inside lies " + over(floor) + " of the footing."),
                        () -> text.add("The floor inside is not drawn: its level or the pipe's is not measured."));
        text.add("The wall is covered from the footing to grade with %s, %s."
                .formatted(covering.material(), covering.promise()));
        text.add("The bottom of the trench is %s wide beside the footing."
                .formatted(section.bottomWidth().text()));
        text.add(bank(section));
        text.add("Soil is heaped " + SectionWords.SPOIL_BACK + " back from that edge.");
        section.bed().ifPresentOrElse(bed -> text.add(bed(bed)), () -> text.add(SectionWords.NO_DRAIN + "."));
        text.add("Above it the trench is filled and packed in lifts.");
        return text.toString();
    }

    private static String over(Length floor) {
        double feet = floor.feet();
        return feet < 0 ? Length.ofFeet(-feet).text() + " below the bottom" : floor.text() + " above the bottom";
    }

    private static String bank(CrossSection section) {
        String inTheWay = SectionWords.inTheWay(section.bank());
        return "%s, %s%s%s. The trench's top edge is %s from the wall."
                .formatted(
                        SectionWords.bank(section.bank()),
                        SectionWords.soil(section.bank()),
                        SectionWords.engineer(section.trenchDepth()),
                        inTheWay.isEmpty() ? "" : "; " + inTheWay,
                        section.reach().text());
    }

    private static String bed(CrossSection.Bed bed) {
        return "%s, holds a %s; %s at the wall and at the bank, lies over its top only."
                .formatted(
                        SectionWords.stone(bed.stone().text()),
                        lower(SectionWords.pipe(bed.pipeOutside(), bed.bedding())),
                        lower(SectionWords.FABRIC));
    }

    private static String lower(String text) {
        return text.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
