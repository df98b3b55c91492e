// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import spadework.measure.Length;
import spadework.pricebook.LineItem;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;

/**
 * A kind of pipe that the price book sells, in all its sizes.
 *
 * @param name the items' name without the size
 * @param sizes smallest first
 */
public record PipeKind(String name, List<Size> sizes) {
    private static final Pattern SIZE = Pattern.compile(",\\s*[\\d./ -]+ ?in$");

    /** One size, with the code of its item. */
    public record Size(String code, Pipe pipe) {}

    /** A kind that somebody named, with the size when it was named by an item's code. */
    public record Chosen(PipeKind kind, Optional<Pipe> size) {}

    public PipeKind {
        sizes = sizes.stream()
                .sorted(Comparator.comparing((Size size) -> size.pipe().inside())
                        .thenComparing(Size::code))
                .toList();
    }

    /** The kinds of pipe of a book, by name. */
    public static List<PipeKind> of(PriceBook book) {
        Map<String, List<Size>> kinds = new TreeMap<>();
        for (LineItem item : book.items().values()) {
            String kind = SIZE.matcher(item.name()).replaceFirst("");
            item.pipe()
                    .ifPresent(pipe -> kinds.computeIfAbsent(kind, name -> new ArrayList<>())
                            .add(new Size(item.code(), pipe)));
        }
        return kinds.entrySet().stream()
                .map(kind -> new PipeKind(kind.getKey(), kind.getValue()))
                .toList();
    }

    /** The kind with that name, or with an item of that code; capitals do not matter. */
    public static Optional<Chosen> find(List<PipeKind> kinds, String text) {
        String wanted = text.strip();
        for (PipeKind kind : kinds) {
            Optional<Pipe> size = kind.sizes.stream()
                    .filter(each -> each.code().equalsIgnoreCase(wanted))
                    .map(Size::pipe)
                    .findFirst();
            if (size.isPresent() || kind.name.equalsIgnoreCase(wanted)) {
                return Optional.of(new Chosen(kind, size));
            }
        }
        return Optional.empty();
    }

    /** The size with that nominal diameter. */
    Optional<Pipe> size(Length nominal) {
        return sizes.stream()
                .map(Size::pipe)
                .filter(pipe -> Math.abs(pipe.nominal().inches() - nominal.inches()) < 1e-6)
                .findFirst();
    }
}
