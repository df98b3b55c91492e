package spadework.paperwork;

import spadework.money.Dollars;

/** A section of the cost sheet. */
public record CostSection(String name, Dollars direct, Dollars lines, Dollars rounding, Dollars price) {}
