package spadework.job;

/** What lies inside the wall below grade. */
public enum Space {
    BASEMENT,
    CRAWL_SPACE
}
