// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import java.util.Arrays;
import spadework.pricebook.Section;

/** What a section of the price is called in the language of a paper. */
public final class SectionNames {
    private SectionNames() {}

    /**
     * The name in the words of a paper; as it stands where those have no other.
     *
     * @param name as takeoff and price have it: {@code Wall A, back wall}
     */
    public static String of(PaperWords terms, String name) {
        String wall = Section.WALL.heading() + " ";
        int comma = name.indexOf(", ");
        if (name.startsWith(wall) && comma > 0) {
            return terms.find(
                            "section.wall",
                            "label",
                            name.substring(wall.length(), comma),
                            "where",
                            name.substring(comma + 2))
                    .orElse(name);
        }
        return Arrays.stream(Section.values())
                .filter(section -> section.heading().equals(name))
                .findFirst()
                .flatMap(section -> terms.find("section." + PaperWords.key(section.label())))
                .orElse(name);
    }
}
