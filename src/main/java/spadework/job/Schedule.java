package spadework.job;

import java.time.LocalDate;

/** The days between which the work starts and is done, and what can move them. */
public record Schedule(LocalDate earliestStart, LocalDate latestFinish, int workingDays, String note) {}
