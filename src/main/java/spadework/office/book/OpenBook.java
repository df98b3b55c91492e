// SPDX-License-Identifier: Apache-2.0
package spadework.office.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spadework.draft.BookDraft;
import spadework.draft.DraftValue.Entries;
import spadework.draft.Leaves;
import spadework.finding.Fault;
import spadework.intake.Intake;
import spadework.intake.ReadBook;
import spadework.pricebook.Assembly;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;

/**
 * A price book as it lies open: its items and assemblies, each with its values as they are spelled in the file.
 *
 * @param file which one
 * @param book empty where the file is at fault
 * @param entries values of each item by its code
 */
public record OpenBook(Path file, Optional<PriceBook> book, List<Fault> faults, Map<String, Entry> entries) {

    /**
     * An item as it is written.
     *
     * @param values by their place in the item, as {@code material/cost}
     * @param bundled whether it still comes from the bundled book; the first change copies it into the firm's own
     */
    public record Entry(Map<String, String> values, boolean bundled) {}

    public OpenBook {
        faults = List.copyOf(faults);
        entries = Map.copyOf(entries);
    }

    /**
     * Opens the book of a service.
     *
     * @throws IOException if it cannot be read, or is not one JSON object
     */
    public static OpenBook of(BookService service) throws IOException {
        BookDraft draft = service.draft();
        ReadBook read = service.read(draft);
        Optional<BookDraft> bundled = draft.startsFromBundled()
                ? BookDraft.read(new String(Intake.bundledBookFile(), StandardCharsets.UTF_8))
                : Optional.empty();
        Map<String, Entry> entries = new LinkedHashMap<>();
        Optional<PriceBook> book = read.faults().isEmpty() ? read.book() : Optional.empty();
        book.ifPresent(one -> one.items().keySet().forEach(code -> {
            Optional<Entries> own = draft.item(code);
            own.or(() -> bundled.flatMap(other -> other.item(code)))
                    .ifPresent(item -> entries.put(code, new Entry(Leaves.of(item), own.isEmpty())));
        }));
        return new OpenBook(service.file(), book, read.faults(), entries);
    }

    /** The items in which every word occurs, in the order of the list; retired ones only where they are asked for. */
    public List<LineItem> items(List<String> words, boolean retired) {
        return book.stream()
                .flatMap(one -> one.items().values().stream())
                .filter(item -> (retired || item.retired().isEmpty()) && BookText.holds(item, words))
                .sorted(Comparator.comparing(LineItem::section).thenComparing(LineItem::code))
                .toList();
    }

    /** The assemblies in which every word occurs: in code, name, notes or the codes of their items; by code. */
    public List<Assembly> assemblies(List<String> words) {
        return book.stream()
                .flatMap(one -> one.assemblies().values().stream())
                .filter(assembly -> holds(assembly, words))
                .sorted(Comparator.comparing(Assembly::code))
                .toList();
    }

    private static boolean holds(Assembly assembly, List<String> words) {
        StringBuilder said = new StringBuilder(assembly.code()).append('\n').append(assembly.name());
        assembly.notes().forEach(note -> said.append('\n').append(note));
        assembly.parts().forEach(part -> said.append('\n').append(part.item()));
        String all = said.toString().toLowerCase(Locale.ROOT);
        return words.stream().allMatch(word -> all.contains(word.toLowerCase(Locale.ROOT)));
    }
}
