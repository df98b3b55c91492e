package spadework.job;

/** What the cleaned wall gets. */
public enum FinishSystem {
    COATING,
    SHEET,
    PARGE
}
