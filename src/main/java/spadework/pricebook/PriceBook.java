// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import spadework.company.Backfill;
import spadework.job.PriceChange;
import spadework.job.Texture;

/**
 * The contractor's line items.
 *
 * @param title as the papers name it
 * @param dated the date that the papers give for the prices
 * @param items by code
 * @param assemblies by code; none has the code of an item
 * @param stoneTonsPerCubicYard density of the drain stone
 * @param truckCubicYards what a truck takes, loose
 */
public record PriceBook(
        String title,
        LocalDate dated,
        Map<String, LineItem> items,
        Map<String, Assembly> assemblies,
        List<EarthFactor> earth,
        double stoneTonsPerCubicYard,
        double truckCubicYards) {

    private static final Set<Measure> PARTS_OF_DIGGING = EnumSet.of(Measure.DIG_WALL_SIDE, Measure.DIG_BULK);

    public PriceBook {
        items = BookItems.of(items);
        assemblies = Map.copyOf(assemblies);
        earth = List.copyOf(earth);
    }

    /** The standard items that follow a measure, by code. */
    public List<LineItem> standardFor(Measure measure) {
        return isLeftOut(measure) ? List.of() : followers(measure);
    }

    private List<LineItem> followers(Measure measure) {
        return BookItems.of(items).followers().getOrDefault(measure, List.of());
    }

    /** A book whose item follows all that the machine digs, as books did before, pays no part of it twice. */
    private boolean isLeftOut(Measure measure) {
        return PARTS_OF_DIGGING.contains(measure)
                && !followers(Measure.DIG_MACHINE).isEmpty();
    }

    /** Standard items for digging that are left out because another one follows all that the machine digs. */
    public List<LineItem> leftOut() {
        return PARTS_OF_DIGGING.stream()
                .filter(this::isLeftOut)
                .flatMap(part -> followers(part).stream())
                .toList();
    }

    /** The standard items by the measure that they follow, each list by code. */
    public Map<Measure, List<LineItem>> standard() {
        Map<Measure, List<LineItem>> standard =
                new HashMap<>(BookItems.of(items).followers());
        if (standard.containsKey(Measure.DIG_MACHINE)) {
            standard.keySet().removeAll(PARTS_OF_DIGGING);
        }
        return standard;
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

    /** The assembly with that code, if there is one. */
    public Optional<Assembly> findAssembly(String code) {
        return Optional.ofNullable(assemblies.get(code));
    }

    /** The items that are retired on that day, or whose prices are past their last good day by then. */
    public List<LineItem> pastOn(LocalDate day) {
        return BookItems.of(items).ending().stream()
                .filter(item -> item.isStaleOn(day) || item.isRetiredOn(day))
                .toList();
    }

    /** The book as a bid of that day uses it: what was retired by then is chosen only where the job names it. */
    public PriceBook on(LocalDate day) {
        List<LineItem> retired = BookItems.of(items).ending().stream()
                .filter(item -> item.isRetiredOn(day))
                .toList();
        if (retired.isEmpty()) {
            return this;
        }
        return with(retired.stream().collect(Collectors.toMap(LineItem::code, LineItem::onlyByName)));
    }

    /** The book as a company uses it whose own fill comes out otherwise than the book's figures for the soil. */
    public PriceBook filledBy(Backfill own) {
        return new PriceBook(
                title,
                dated,
                items,
                assemblies,
                earth.stream().map(factor -> factor.filledBy(own)).toList(),
                stoneTonsPerCubicYard,
                truckCubicYards);
    }

    /** The book as one job uses it: the job's own costs in place of the book's. */
    public PriceBook changedBy(List<PriceChange> changes) {
        if (changes.isEmpty()) {
            return this;
        }
        Map<String, LineItem> changed = new HashMap<>();
        for (PriceChange change : changes) {
            LineItem before = changed.getOrDefault(change.code(), items.get(change.code()));
            if (before != null) {
                changed.put(change.code(), before.changedBy(change));
            }
        }
        return with(changed);
    }

    /**
     * The same book with other items in place of those with their codes, put together once for as long as what they
     * follow from stays the same.
     *
     * @param machines what the items follow from, and nothing else
     */
    public PriceBook pacedBy(Object machines, Supplier<Map<String, LineItem>> others) {
        Map<String, LineItem> all = BookItems.of(items).paced(machines, others);
        return new PriceBook(title, dated, all, assemblies, earth, stoneTonsPerCubicYard, truckCubicYards);
    }

    /** The same book with other items in place of those with their codes. */
    public PriceBook with(Map<String, LineItem> others) {
        Map<String, LineItem> all = BookItems.of(items).with(others);
        return new PriceBook(title, dated, all, assemblies, earth, stoneTonsPerCubicYard, truckCubicYards);
    }
}
