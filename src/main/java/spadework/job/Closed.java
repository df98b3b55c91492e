package spadework.job;

import java.time.LocalDate;

/**
 * The end of the work.
 *
 * @param completed the day from which the warranty runs
 */
public record Closed(LocalDate completed) {}
