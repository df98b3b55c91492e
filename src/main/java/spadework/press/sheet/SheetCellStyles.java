// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of one workbook: each combination is made once, in the order in which it is first asked for. */
public final class SheetCellStyles {
    private final XSSFWorkbook book;
    private final Map<Look, XSSFCellStyle> made = new HashMap<>();
    private final Map<Letters, XSSFFont> fonts = new HashMap<>();

    SheetCellStyles(XSSFWorkbook book) {
        this.book = book;
    }

    /**
     * A look.
     *
     * @param format number format
     * @param figure true for what stands right unless the style says otherwise
     * @param quoted true for text that would be taken for a formula if it were typed
     * @param first true in the first column; words in the others stand a step in, clear of what is left of them
     */
    public record Look(SheetStyle style, String format, boolean figure, boolean quoted, boolean first) {}

    private record Letters(String font, double size, boolean bold, boolean italic, String color) {}

    XSSFCellStyle get(Look look) {
        return made.computeIfAbsent(look, this::make);
    }

    private XSSFCellStyle make(Look look) {
        SheetStyle style = look.style();
        XSSFCellStyle cell = book.createCellStyle();
        cell.setFont(font(style));
        cell.setDataFormat(book.createDataFormat().getFormat(look.format()));
        cell.setWrapText(!look.figure());
        cell.setVerticalAlignment(VerticalAlignment.CENTER);
        HorizontalAlignment side = style.align()
                .map(align -> HorizontalAlignment.valueOf(align.name()))
                .orElse(look.figure() ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
        cell.setAlignment(side);
        cell.setIndention((short) (side == HorizontalAlignment.LEFT && !look.first() ? 1 : 0));
        style.tint().ifPresent(tint -> {
            cell.setFillForegroundColor(color(tint));
            cell.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        });
        cell.setBorderTop(border(style.over()));
        cell.setBorderBottom(border(style.under()));
        rule(style.over()).ifPresent(cell::setTopBorderColor);
        rule(style.under()).ifPresent(cell::setBottomBorderColor);
        cell.setQuotePrefixed(look.quoted());
        return cell;
    }

    /** The hairlines of spreadsheets print as black dots; a thin line in a light gray is what they stand for here. */
    private static BorderStyle border(SheetStyle.Rule rule) {
        return rule == SheetStyle.Rule.HAIR ? BorderStyle.THIN : BorderStyle.valueOf(rule.name());
    }

    private static Optional<XSSFColor> rule(SheetStyle.Rule rule) {
        return switch (rule) {
            case NONE -> Optional.empty();
            case HAIR -> Optional.of(color("C9CFD0"));
            case THIN -> Optional.of(color("6A7F82"));
            case MEDIUM -> Optional.of(color("141414"));
        };
    }

    private XSSFFont font(SheetStyle style) {
        Letters letters = new Letters(style.font(), style.size(), style.bold(), style.italic(), style.color());
        return fonts.computeIfAbsent(letters, wanted -> {
            XSSFFont font = book.createFont();
            font.setFontName(wanted.font());
            font.setFontHeight(wanted.size());
            font.setBold(wanted.bold());
            font.setItalic(wanted.italic());
            font.setColor(color(wanted.color()));
            return font;
        });
    }

    private static XSSFColor color(String hex) {
        int rgb = Integer.parseInt(hex, 16);
        return new XSSFColor(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb});
    }
}
