package spadework.job;

/** What takes the water. */
public enum OutletKind {
    DAYLIGHT,
    SUMP,
    APPROVED_STORM
}
