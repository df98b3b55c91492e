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

    private final SectionWords words;
    private final Wording said;

    SectionInWords(SectionWords words) {
        this.words = words;
        this.said = WORDS.in(words.language());
    }

    String of(CrossSection section, WallCovering covering) {
        StringJoiner text = new StringJoiner(" ");
        text.add(said.get("section-in-words.section-through-trench-at", words.walls(section.walls())));
        text.add(said.get(
                "section-in-words.from-grade-to-top",
                section.depth().text(),
                section.trenchDepth().text()));
        text.add(words.footing(section.footing()) + ".");
        section.floor()
                .ifPresentOrElse(
                        floor -> text.add(floor(floor)),
                        () -> text.add(said.get("section-in-words.floor-inside-not-drawn")));
        text.add(said.get("section-in-words.wall-covered-from-footing", covering.material(), words.promise(covering)));
        text.add(said.get(
                "section-in-words.bottom-trench-wide-beside",
                section.bottomWidth().text()));
        text.add(bank(section));
        text.add(
                section.noSoilOn().isPresent()
                        ? said.get("section-in-words.no-soil")
                        : said.get("section-in-words.soil-heaped", words.spoilBack()));
        if (!section.beside().isEmpty()) {
            text.add(said.get(
                    "section-in-words.beside",
                    section.beside().stream().map(words::beside).collect(Collectors.joining("; "))));
        }
        section.bed().ifPresentOrElse(bed -> text.add(bed(bed)), () -> text.add(words.noDrain() + "."));
        text.add(said.get("section-in-words.above-trench-filled-and"));
        return text.toString();
    }

    private String floor(Length floor) {
        double feet = floor.feet();
        return feet < 0
                ? said.get("section-in-words.floor-below", Length.ofFeet(-feet).text())
                : said.get("section-in-words.floor-above", floor.text());
    }

    private String bank(CrossSection section) {
        String inTheWay = words.inTheWay(section.bank());
        return said.get(
                "section-in-words.bank",
                words.bank(section.bank()),
                words.soil(section.bank()),
                words.engineer(section.trenchDepth()),
                inTheWay.isEmpty() ? "" : "; " + inTheWay,
                section.reach().text());
    }

    private String bed(CrossSection.Bed bed) {
        return said.get(
                "section-in-words.bed",
                words.stone(bed.stone().text()),
                SectionWords.small(words.pipe(bed.pipeOutside(), bed.bedding())),
                SectionWords.small(words.fabric()));
    }
}
