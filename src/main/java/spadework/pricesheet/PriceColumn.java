// SPDX-License-Identifier: Apache-2.0
package spadework.pricesheet;

import java.math.BigDecimal;
import java.util.stream.Stream;
import spadework.money.Dollars;
import spadework.pricebook.LineItem;

/** The columns of the price workbook: what stands in each, and where that stands in an item of the book. */
public enum PriceColumn {
    CODE("Code", 16, "code"),
    SECTION("Section", 12, "section"),
    NAME("Name", 38, "name"),
    UNIT("Unit", 7, "unit"),
    COST("Material cost, $", 14, "material/cost"),
    SOLD("Sold as", 22, "material/sold"),
    WASTE("Waste, %", 10, "material/waste"),
    CREW("Crew", 14, "labor/crew"),
    PER_HOUR("Units an hour", 12, "labor/perHour"),
    MACHINE("Machine", 16, "labor/machine"),
    SUBCONTRACT("Subcontract, $", 13, "subcontract"),
    DISPOSAL("Disposal, $", 12, "disposal"),
    GOOD_UNTIL("Good until", 12, "goodUntil"),
    SOURCE("Source", 50, "source/text"),
    SOURCE_ON("Source of", 12, "source/on");

    private final String title;
    private final int width;
    private final String place;

    PriceColumn(String title, int width, String place) {
        this.title = title;
        this.width = width;
        this.place = place;
    }

    /** The head of the column. */
    public String title() {
        return title;
    }

    /** In characters. */
    int width() {
        return width;
    }

    /** Where the value stands in an item, as {@code material/cost}. */
    public String place() {
        return place;
    }

    /** Whether the cell of an item may be changed: not what the item is, nor a part that it does not have. */
    public boolean isOpen(LineItem item) {
        return switch (this) {
            case CODE, SECTION, NAME, UNIT, SOLD -> false;
            case COST, WASTE -> item.material().isPresent();
            case CREW, PER_HOUR, MACHINE -> item.labor().isPresent();
            case SUBCONTRACT, DISPOSAL, GOOD_UNTIL, SOURCE, SOURCE_ON -> true;
        };
    }

    /** Whether the column holds amounts of money. */
    boolean isMoney() {
        return this == COST || this == SUBCONTRACT || this == DISPOSAL;
    }

    /** What the cell of an item holds. */
    public CellContent of(LineItem item) {
        return switch (this) {
            case CODE -> CellContent.words(item.code());
            case SECTION -> CellContent.words(item.section().label());
            case NAME -> CellContent.words(item.name());
            case UNIT -> CellContent.words(item.unit().symbol());
            case COST -> number(item.material().stream().map(m -> m.cost().amount()));
            case SOLD -> CellContent.words(item.material().map(m -> m.sold()).orElse(""));
            case WASTE ->
                number(item.material().stream().map(m -> m.waste().fraction().movePointRight(2)));
            case CREW -> CellContent.words(item.labor().map(l -> l.crew()).orElse(""));
            case PER_HOUR -> number(item.labor().stream().map(l -> l.perHour()));
            case MACHINE ->
                CellContent.words(item.labor().flatMap(l -> l.machine()).orElse(""));
            case SUBCONTRACT -> number(item.subcontract().stream().map(Dollars::amount));
            case DISPOSAL -> number(item.disposal().stream().map(Dollars::amount));
            case GOOD_UNTIL ->
                CellContent.words(item.goodUntil().map(Object::toString).orElse(""));
            case SOURCE -> CellContent.words(item.source().text());
            case SOURCE_ON -> CellContent.words(item.source().on().toString());
        };
    }

    /** How the book spells what a cell of the item holds; empty for an empty cell. */
    public String spelled(LineItem item, CellContent content) {
        if (content instanceof CellContent.Words words) {
            return words.text();
        }
        if (content instanceof CellContent.Figure number) {
            String plain = number.value().toPlainString();
            return isMoney()
                    ? dollars(number.value())
                    : this == WASTE
                            ? plain + "%"
                            : this == PER_HOUR ? plain + " " + item.unit().symbol() : plain;
        }
        return "";
    }

    /** With at least two decimals, as the book writes dollars; what has more keeps them, so that it can be refused. */
    static String dollars(BigDecimal amount) {
        BigDecimal cents = amount.scale() < 2 ? amount.setScale(2) : amount;
        return (cents.signum() < 0 ? "-$" : "$") + cents.abs().toPlainString();
    }

    private static CellContent number(Stream<BigDecimal> value) {
        return value.<CellContent>map(CellContent.Figure::new).findFirst().orElse(CellContent.empty());
    }
}
