package spadework.pricing;

import spadework.measure.Unit;
import spadework.money.Dollars;

/** A price agreed beforehand for what nobody can see before digging. */
public record UnitPrice(String code, String name, String homeowner, Unit unit, Dollars price) {}
