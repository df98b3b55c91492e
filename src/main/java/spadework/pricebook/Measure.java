// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.util.Locale;
import spadework.measure.Unit;

/**
 * What a line item's quantity can follow. The takeoff measures these; a line item of the book names one as the thing
 * that drives it.
 */
public enum Measure {
    DUG("soil dug, bank", Unit.CUBIC_YARD),
    DIG_MACHINE("dig by machine", Unit.CUBIC_YARD),
    /** The part of it that lies straight before the wall, where the bucket goes with care. */
    DIG_WALL_SIDE("dig by machine beside the wall", Unit.CUBIC_YARD),
    /** The part of it behind that: banks, corners and ends, where the machine digs in the open. */
    DIG_BULK("dig by machine in bulk", Unit.CUBIC_YARD),
    DIG_HAND("dig by hand", Unit.CUBIC_YARD),
    /** What the machine digs has to lie somewhere until it is filled again. */
    SPOIL("machine-dug soil to move aside", Unit.CUBIC_YARD),
    SHIELD("shielded trench", Unit.FOOT),
    STRIP("wall to strip", Unit.SQUARE_FOOT),
    CLEAN("wall to clean", Unit.SQUARE_FOOT),
    FOOTING_CLEAN("footing to wash", Unit.FOOT),
    CRACK("crack to fill", Unit.FOOT),
    COVE("cove at the footing", Unit.FOOT),
    COAT("wall to coat", Unit.SQUARE_FOOT),
    COAT_GALLONS("coating, net", Unit.GALLON),
    SHEET("wall to cover with sheet", Unit.SQUARE_FOOT),
    PARGE("wall to parge", Unit.SQUARE_FOOT),
    PROTECT("coating to protect", Unit.SQUARE_FOOT),
    WINDOW_WELL("window well", Unit.EACH),
    STONE("drain stone", Unit.CUBIC_YARD),
    STONE_TONS("drain stone, net", Unit.TON),
    FABRIC("fabric over the stone", Unit.SQUARE_YARD),
    DRAIN_PIPE("perforated pipe", Unit.FOOT),
    DRAIN_BEND("bend in the footing drain", Unit.EACH),
    DRAIN_TEE("tee into the solid main", Unit.EACH),
    DRAIN_COUPLING("coupling in the footing drain", Unit.EACH),
    DRAIN_ADAPTER("adapter from corrugated to smooth", Unit.EACH),
    CLEANOUT("cleanout", Unit.EACH),
    MAIN_PIPE("solid main", Unit.FOOT),
    MAIN_BEND("bend in the solid main", Unit.EACH),
    ROOF_PIPE("roof line", Unit.FOOT),
    ROOF_BEND("bend in a roof line", Unit.EACH),
    DOWNSPOUT("downspout connection", Unit.EACH),
    PIPE_TRENCH("pipe trench away from the house", Unit.CUBIC_YARD),
    DAYLIGHT_OUTLET("outlet to daylight", Unit.EACH),
    STORM_OUTLET("connection to a storm drain", Unit.EACH),
    SUMP("sump", Unit.EACH),
    SUMP_DISCHARGE("sump discharge pipe", Unit.FOOT),
    FLOW_TEST("flow test", Unit.EACH),
    BACKFILL("backfill", Unit.CUBIC_YARD),
    SURPLUS("surplus soil, bank", Unit.CUBIC_YARD),
    HAUL("surplus soil, loose", Unit.CUBIC_YARD),
    HAUL_LOAD("truck load", Unit.LOAD),
    IMPORT("imported soil", Unit.CUBIC_YARD),
    REGRADE("soil shaped to fall away", Unit.FOOT),
    TOPSOIL("topsoil", Unit.CUBIC_YARD),
    SEED("seed and straw", Unit.SQUARE_YARD),
    SOD("sod", Unit.SQUARE_YARD),
    CONCRETE("concrete broken out and poured", Unit.SQUARE_YARD),
    PLANTS("shrub taken up and set back", Unit.EACH),
    WALL_FOOT("foot of wall", Unit.FOOT),
    JOB("job", Unit.EACH),
    WORKING_DAY("working day", Unit.DAY),
    TRENCH_INSPECTION("daily trench inspection", Unit.EACH),
    SHIELD_DAY("shield on site", Unit.DAY),
    EXCAVATOR_DAY("excavator on site", Unit.DAY),
    STANDING_DAY("excavator standing", Unit.DAY),
    PUMP_DAY("pump on site", Unit.DAY),
    MOBILIZATION_TRIP("mobilization trip", Unit.EACH),
    OVERTIME("overtime", Unit.HOUR);

    private final String trade;
    private final String heading;
    private final String id;
    private final Unit unit;

    Measure(String trade, Unit unit) {
        this.trade = trade;
        this.heading = trade.substring(0, 1).toUpperCase(Locale.ROOT) + trade.substring(1);
        this.id = trade.replace(",", "").replace(' ', '-');
        this.unit = unit;
    }

    /** The trade's words for it; also its name in a price book. */
    public String trade() {
        return trade;
    }

    /** The same with a capital letter, as it begins a description. */
    public String heading() {
        return heading;
    }

    /** The same as part of a quantity's id: without commas, hyphens between its words. */
    public String id() {
        return id;
    }

    /** The unit in which it is measured. */
    public Unit unit() {
        return unit;
    }

    /** Whether it is counted on the calendar of crews and not on the ground. */
    public boolean isByDays() {
        return ordinal() >= WORKING_DAY.ordinal();
    }
}
