package spadework.pricebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.job.Texture;

/**
 * The contractor's line items.
 *
 * @param title as the papers name it
 * @param dated the date that the papers give for the prices
 * @param items by code
 * @param stoneTonsPerCubicYard density of the drain stone
 * @param truckCubicYards what a truck takes, loose
 */
public record PriceBook(
        String title,
        LocalDate dated,
        Map<String, LineItem> items,
        List<EarthFactor> earth,
        double stoneTonsPerCubicYard,
        double truckCubicYards) {

    public PriceBook {
        items = Map.copyOf(items);
        earth = List.copyOf(earth);
    }

    /** The standard items that follow a measure, by code. */
    public List<LineItem> standardFor(Measure measure) {
        return items.values().stream()
                .filter(item -> item.standard() && item.follows().equals(Optional.of(measure)))
                .sorted((a, b) -> a.code().compareTo(b.code()))
                .toList();
    }

    public Optional<LineItem> find(String code) {
        return Optional.ofNullable(items.get(code));
    }

    /**
     * The item with that code.
     *
     * @throws IllegalArgumentException if there is none; intake has checked every code
     */
    public LineItem get(String code) {
        return find(code).orElseThrow(() -> new IllegalArgumentException("no line item " + code));
    }

    /**
     * Swell and shrink of a soil.
     *
     * @throws IllegalArgumentException if no group holds the texture; intake has checked that every texture has one
     */
    public EarthFactor earthFor(Texture texture) {
        return earth.stream()
                .filter(factor -> factor.textures().contains(texture))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no earth factor for " + texture));
    }
}
