package spadework.job;

/** Water seen in the soil of the trench. */
public enum Seepage {
    NONE,
    DAMP,
    FREE,
    UNKNOWN
}
