package spadework.pricebook;

/** The heading under which a line item is priced. */
public enum Section {
    /** The wall that the quantity belongs to: one section a wall. */
    WALL,
    /** Footing drain, solid main, outlet or sump. */
    DRAIN,
    /** Downspouts and their own line. */
    ROOF_WATER,
    /** Haul, import, grading, planting. */
    GROUND,
    /** Getting there, permits, protection, leaving. */
    SETUP
}
