// SPDX-License-Identifier: Apache-2.0
package spadework.intake.book;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Shares;
import spadework.job.Texture;
import spadework.pricebook.EarthFactor;
import spadework.pricebook.Source;

/** The swell and shrink of the soils: every texture in one group, none in two. */
public final class EarthFactorReader {
    static final ValueKind<Source> SOURCE = ValueKind.object(
            fields -> new Source(fields.get("text", Texts.TEXT), fields.get("on", CalendarDates.DATE)));

    static final ValueKind<List<EarthFactor>> GROUPS = new ValueKind<>("[{…}]", EarthFactorReader::groups);

    private static final ValueKind<EarthFactor> GROUP = ValueKind.object(fields -> new EarthFactor(
            fields.get("group", Texts.LABEL),
            fields.filled("textures", Choices.of(Texture.class)),
            fields.get("swell", Shares.fromZeroTo(100)),
            fields.get("shrink", Shares.fromZeroToUnder(100)),
            fields.get("source", SOURCE)));

    private EarthFactorReader() {}

    private static List<EarthFactor> groups(SourceNode node) {
        List<EarthFactor> groups = node.elements().stream().map(GROUP::read).toList();
        Set<Texture> missing = EnumSet.allOf(Texture.class);
        boolean sound = !node.isSilent();
        for (int i = 0; i < groups.size(); i++) {
            List<Texture> textures = groups.get(i).textures();
            for (int j = 0; j < textures.size(); j++) {
                String pointer = node.pointer() + "/" + i + "/textures/" + j;
                if (node.sheet().isSound(pointer) && !missing.remove(textures.get(j))) {
                    String found = "\"" + Choices.word(textures.get(j)) + "\" a second time";
                    node.sheet().fault(pointer, found, "each texture in one group", "keep one of the two");
                }
            }
            sound &= node.sheet().isSound(node.pointer() + "/" + i);
        }
        if (sound && !missing.isEmpty()) {
            String names = missing.stream().map(Choices::word).collect(Collectors.joining(", "));
            node.fault("no group for " + names, "a group for every texture", "add what is missing to a group");
        }
        return groups;
    }
}
