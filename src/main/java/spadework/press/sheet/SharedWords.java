// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.LinkedHashMap;
import java.util.Map;

/** The words of a workbook's cells, each once, and the part that holds them (ECMA-376 part 1, 18.4). */
final class SharedWords {
    private final Map<String, Integer> places = new LinkedHashMap<>();
    private int used;

    /** The number by which a cell calls these words. */
    int number(String words) {
        used++;
        return places.computeIfAbsent(words, wanted -> places.size());
    }

    /** The part as it is stored. */
    byte[] part() {
        XmlPart part = new XmlPart("sst", WorkbookParts.MAIN).attributes("count", used, "uniqueCount", places.size());
        places.keySet().forEach(words -> {
            part.open("si").open("t");
            if (needsItsSpaces(words)) {
                part.attributes("xml:space", "preserve");
            }
            part.words(SheetText.stored(words)).close().close();
        });
        return part.bytes();
    }

    /** Spaces at the ends and new lines are kept only where this is asked for. */
    private static boolean needsItsSpaces(String words) {
        return !words.equals(words.strip()) || words.indexOf('\n') >= 0;
    }
}
