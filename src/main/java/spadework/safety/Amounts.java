package spadework.safety;

import java.util.Locale;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.working.Working;

/** Figures as findings carry them. */
final class Amounts {
    private Amounts() {}

    /** A ratio as percent: {@code 0.52 %}. */
    static String slope(double ratio) {
        return String.format(Locale.ROOT, "%.2f %%", ratio * 100);
    }

    /** A share that is percent already, to the whole percent. */
    static String share(Working percent) {
        return String.format(Locale.ROOT, "%.0f %%", percent.number());
    }

    /** A quantity in its own unit, to the decimals of that unit; small flows to one more figure. */
    static String of(Working working) {
        boolean small = working.number() > 0 && working.number() < 0.05;
        return small
                ? String.format(Locale.ROOT, "under 0.05 %s", working.unit().symbol())
                : Figures.withUnit(working.value(), working.unit());
    }

    /** A length in feet as feet and inches. */
    static String feet(double feet) {
        return Length.ofFeet(feet).text();
    }

    /** A level in feet. */
    static String level(double feet) {
        return Length.ofFeet(feet).levelText();
    }
}
