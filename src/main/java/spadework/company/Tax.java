package spadework.company;

import spadework.measure.Percent;

/** The company's tax setting. */
public record Tax(TaxMode mode, Percent rate) {}
