package spadework.pricing;

import spadework.money.Dollars;
import spadework.measure.Percent;

/** A payment with its amount. */
public record Due(String when, Percent share, boolean atSigning, Dollars amount) {}
