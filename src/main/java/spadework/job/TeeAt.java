package spadework.job;

/** Where the footing drain meets the solid main, seen along the drain. */
public enum TeeAt {
    START,
    MIDDLE,
    END
}
