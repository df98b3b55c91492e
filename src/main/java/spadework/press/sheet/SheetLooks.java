// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BuiltinFormats;

/**
 * The looks of one workbook's cells and the part that holds them (ECMA-376 part 1, 18.8): each combination is made
 * once, in the order in which it is first asked for.
 */
final class SheetLooks {
    /** Numbers below this one are formats that every spreadsheet knows. */
    private static final int FIRST_OWN_FORMAT = 164;

    private final Map<Look, Integer> looks = new LinkedHashMap<>();
    private final List<Letters> letters = new ArrayList<>();
    private final List<Optional<String>> tints = new ArrayList<>(List.of(Optional.empty(), Optional.empty()));
    private final List<Rules> rules = new ArrayList<>(List.of(new Rules(SheetStyle.Rule.NONE, SheetStyle.Rule.NONE)));
    private final List<String> formats = new ArrayList<>();

    /** The first style's letters are those by whose digits column widths are counted. */
    SheetLooks(WorkbookPlan plan) {
        SheetStyle text = plan.styles().values().iterator().next();
        letters.add(new Letters(text.font(), text.size(), false, false, "000000"));
    }

    /**
     * A look.
     *
     * @param format number format
     * @param figure true for what stands right unless the style says otherwise
     * @param quoted true for text that would be taken for a formula if it were typed
     * @param first true in the first column; words in the others stand a step in, clear of what is left of them
     */
    record Look(SheetStyle style, String format, boolean figure, boolean quoted, boolean first) {}

    private record Letters(String font, double size, boolean bold, boolean italic, String color) {}

    private record Rules(SheetStyle.Rule over, SheetStyle.Rule under) {}

    /** The look's number; 0 is the look of cells that have none. */
    int number(Look look) {
        return looks.computeIfAbsent(look, wanted -> looks.size() + 1);
    }

    /** The part as it is stored. */
    byte[] part() {
        XmlPart cells = new XmlPart("styleSheet", WorkbookParts.MAIN);
        List<Integer> numbers =
                looks.keySet().stream().map(look -> formatNumber(look.format())).toList();
        List<Integer> fonts = looks.keySet().stream()
                .map(look -> place(letters, letters(look.style())))
                .toList();
        List<Integer> fills =
                looks.keySet().stream().map(look -> fill(look.style())).toList();
        List<Integer> borders = looks.keySet().stream()
                .map(look ->
                        place(rules, new Rules(look.style().over(), look.style().under())))
                .toList();
        formats(cells);
        cells.open("fonts", "count", letters.size());
        letters.forEach(one -> font(cells, one));
        cells.close();
        fills(cells);
        cells.open("borders", "count", rules.size());
        rules.forEach(one -> border(cells, one));
        cells.close();
        cells.open("cellStyleXfs", "count", 1)
                .empty("xf", "numFmtId", 0, "fontId", 0, "fillId", 0, "borderId", 0)
                .close();
        cells.open("cellXfs", "count", looks.size() + 1)
                .empty("xf", "numFmtId", 0, "fontId", 0, "fillId", 0, "borderId", 0, "xfId", 0);
        int i = 0;
        for (Look look : looks.keySet()) {
            cells.open("xf", "numFmtId", numbers.get(i), "fontId", fonts.get(i), "fillId", fills.get(i));
            cells.attributes("borderId", borders.get(i), "xfId", 0, "quotePrefix", flag(look.quoted()));
            cells.attributes("applyNumberFormat", 1, "applyFont", 1, "applyFill", 1, "applyBorder", 1);
            cells.attributes("applyAlignment", 1);
            alignment(cells, look);
            cells.close();
            i++;
        }
        cells.close();
        return cells.bytes();
    }

    private void formats(XmlPart cells) {
        if (!formats.isEmpty()) {
            cells.open("numFmts", "count", formats.size());
            for (int i = 0; i < formats.size(); i++) {
                cells.empty("numFmt", "numFmtId", FIRST_OWN_FORMAT + i, "formatCode", formats.get(i));
            }
            cells.close();
        }
    }

    private int formatNumber(String format) {
        int known = BuiltinFormats.getBuiltinFormat(format);
        return known >= 0 ? known : FIRST_OWN_FORMAT + place(formats, format);
    }

    private static <T> int place(List<T> among, T wanted) {
        int found = among.indexOf(wanted);
        if (found < 0) {
            among.add(wanted);
            return among.size() - 1;
        }
        return found;
    }

    private static Letters letters(SheetStyle style) {
        return new Letters(style.font(), style.size(), style.bold(), style.italic(), style.color());
    }

    private static void font(XmlPart cells, Letters one) {
        cells.open("font");
        if (one.bold()) {
            cells.empty("b");
        }
        if (one.italic()) {
            cells.empty("i");
        }
        cells.empty("sz", "val", one.size()).empty("color", "rgb", color(one.color()));
        cells.empty("name", "val", one.font()).empty("family", "val", 2).close();
    }

    private int fill(SheetStyle style) {
        return style.tint().isEmpty() ? 0 : place(tints, style.tint());
    }

    /** The first two are given: none, and a pattern that is not used here. */
    private void fills(XmlPart cells) {
        cells.open("fills", "count", tints.size());
        cells.open("fill").empty("patternFill", "patternType", "none").close();
        cells.open("fill").empty("patternFill", "patternType", "gray125").close();
        for (Optional<String> tint : tints.subList(2, tints.size())) {
            cells.open("fill").open("patternFill", "patternType", "solid");
            cells.empty("fgColor", "rgb", color(tint.orElseThrow())).empty("bgColor", "indexed", 64);
            cells.close().close();
        }
        cells.close();
    }

    private static void border(XmlPart cells, Rules one) {
        cells.open("border").empty("left").empty("right");
        rule(cells, "top", one.over());
        rule(cells, "bottom", one.under());
        cells.empty("diagonal").close();
    }

    private static void rule(XmlPart cells, String side, SheetStyle.Rule rule) {
        if (rule == SheetStyle.Rule.NONE) {
            cells.empty(side);
        } else {
            cells.open(side, "style", line(rule))
                    .empty("color", "rgb", color(shade(rule)))
                    .close();
        }
    }

    /** The hairlines of spreadsheets print as black dots; a thin line in a light gray is what they stand for here. */
    private static String line(SheetStyle.Rule rule) {
        return rule == SheetStyle.Rule.MEDIUM ? "medium" : "thin";
    }

    private static String shade(SheetStyle.Rule rule) {
        return switch (rule) {
            case NONE, HAIR -> "C9CFD0";
            case THIN -> "6A7F82";
            case MEDIUM -> "141414";
        };
    }

    private static void alignment(XmlPart cells, Look look) {
        SheetStyle.TextAlign side =
                look.style().align().orElse(look.figure() ? SheetStyle.TextAlign.RIGHT : SheetStyle.TextAlign.LEFT);
        int step = side == SheetStyle.TextAlign.LEFT && !look.first() ? 1 : 0;
        cells.empty("alignment", "horizontal", side.name().toLowerCase(Locale.ROOT), "vertical", "center");
        cells.attributes("wrapText", flag(!look.figure()), "indent", step);
    }

    static int flag(boolean yes) {
        return yes ? 1 : 0;
    }

    /** With the two digits before it that make it cover what is below. */
    private static String color(String hex) {
        return "FF" + hex;
    }
}
