package spadework.job;

import spadework.measure.Length;

/** The cross-section of a pipe trench away from the house. */
public record TrenchSize(Length width, Length depth) {}
