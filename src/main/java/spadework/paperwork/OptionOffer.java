package spadework.paperwork;

import java.util.List;
import spadework.money.Dollars;

/**
 * An option as the proposal offers it.
 *
 * @param quantities the measured quantities that a homeowner understands
 * @param price before tax; below zero where it saves
 * @param tax sales tax on it; zero where none is collected
 * @param total with tax
 * @param amount the total without a sign
 */
public record OptionOffer(
        String label,
        String title,
        String why,
        AlteredWork work,
        List<QuantityMove> quantities,
        Dollars price,
        Dollars tax,
        Dollars total,
        Dollars amount) {

    public OptionOffer {
        quantities = List.copyOf(quantities);
    }

    /** Whether it saves. */
    public boolean saves() {
        return total.isNegative();
    }
}
