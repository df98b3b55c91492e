// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.util.AbstractMap;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Line items by code, with what every price asks of all of them looked up once for as long as the book is kept. It
 * never changes; whoever puts an item in its place makes a new one.
 */
final class BookItems extends AbstractMap<String, LineItem> {
    private final Map<String, LineItem> items;
    private volatile List<LineItem> ending;
    private volatile Map<Measure, List<LineItem>> followers;
    private volatile Paced paced = new Paced(List.of(), this);

    /** The items at the pace of some machines, which the next price asks for as well. */
    private record Paced(Object machines, BookItems items) {}

    private BookItems(Map<String, LineItem> items) {
        this.items = items;
    }

    static BookItems of(Map<String, LineItem> items) {
        return items instanceof BookItems same ? same : new BookItems(new HashMap<>(items));
    }

    /** The same with other items in place of those with their codes. */
    BookItems with(Map<String, LineItem> others) {
        Map<String, LineItem> all = new HashMap<>(items);
        all.putAll(others);
        return new BookItems(all);
    }

    /**
     * The same at the pace of machines, put together once for as long as the machines stay the same.
     *
     * @param machines what the changes follow from, and nothing else
     */
    BookItems paced(Object machines, Supplier<Map<String, LineItem>> changes) {
        Paced before = paced;
        if (before.machines.equals(machines)) {
            return before.items;
        }
        Map<String, LineItem> changed = changes.get();
        BookItems now = changed.isEmpty() ? this : with(changed);
        paced = new Paced(machines, now);
        return now;
    }

    /** Those that are retired on some day, or whose prices have a last good day. */
    List<LineItem> ending() {
        if (ending == null) {
            ending = items.values().stream()
                    .filter(item ->
                            item.retired().isPresent() || item.goodUntil().isPresent())
                    .toList();
        }
        return ending;
    }

    /** The standard items by the measure that they follow, each list by code. */
    Map<Measure, List<LineItem>> followers() {
        if (followers == null) {
            followers = items.values().stream()
                    .filter(item -> item.standard() && item.follows().isPresent())
                    .sorted(Comparator.comparing(LineItem::code))
                    .collect(Collectors.groupingBy(
                            item -> item.follows().get(),
                            () -> new EnumMap<>(Measure.class),
                            Collectors.toUnmodifiableList()));
        }
        return followers;
    }

    @Override
    public LineItem get(Object code) {
        return items.get(code);
    }

    @Override
    public boolean containsKey(Object code) {
        return items.containsKey(code);
    }

    @Override
    public Set<Entry<String, LineItem>> entrySet() {
        return Collections.unmodifiableMap(items).entrySet();
    }
}
