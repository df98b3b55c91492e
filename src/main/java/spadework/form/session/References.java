// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.finding.Severity;
import spadework.form.kit.Messages;
import spadework.form.kit.WordChoice;
import spadework.office.Bid;
import spadework.office.NamedChoice;
import spadework.office.NamedChoices;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Section;

/** What a place can name: items of the price book with their price, walls, pipes, outlets, photos of the job. */
public final class References {
    private static final Pattern ITEMS = Pattern.compile(".*/(code|item|items|strip)(/0)?");
    private static final Pattern PHOTOS = Pattern.compile("/observations/0/photos(/0)?|.*/holdPoints/0/photo");
    private static final Pattern NAMED = Pattern.compile(
            "/changes/0/unitPrices/0/price|/taxClass|/acceptedStops/0/(finding|about)|" + PHOTOS.pattern());
    private static final List<String> WALLS = List.of("/walls");
    private static final List<String> PIPES = List.of("/water/drains", "/water/mains", "/water/roofLines");

    private References() {}

    /** Whether a place, as the format has it, names something that can be picked. */
    public static boolean isAt(String format) {
        return ITEMS.matcher(format).matches()
                || NAMED.matcher(format).matches()
                || format.matches("/corners/0/(first|second)|.*/section")
                || !lists(format).isEmpty();
    }

    /** What can be picked there now. */
    public static List<WordChoice> at(JobSession session, String format) {
        if (ITEMS.matcher(format).matches()) {
            return items(session);
        }
        if (NAMED.matcher(format).matches()) {
            return named(session, format);
        }
        Draft draft = session.draft();
        List<WordChoice> choices = new ArrayList<>();
        if (format.endsWith("/section")) {
            for (Section section : Section.values()) {
                choices.add(new WordChoice(section.label(), section.label()));
            }
            choices.addAll(labels(draft, WALLS));
        } else if (format.matches("/corners/0/(first|second)")) {
            for (WordChoice wall : labels(draft, WALLS)) {
                for (String end : List.of("start", "end")) {
                    String word = wall.word() + " " + end;
                    choices.add(new WordChoice(word, Messages.of("pick.named", word, where(draft, wall.word()))));
                }
            }
        } else {
            choices.addAll(labels(draft, lists(format)));
        }
        return choices;
    }

    /** What the company, the price, the findings or the photos of the job have by name. */
    private static List<WordChoice> named(JobSession session, String format) {
        if (PHOTOS.matcher(format).matches()) {
            return photos(session.draft());
        }
        Optional<Bid> bid = session.bid();
        if (format.startsWith("/acceptedStops")) {
            boolean id = format.endsWith("/finding");
            return session.findings().stream()
                    .filter(finding -> finding.severity() == Severity.STOP)
                    .map(finding -> choice(
                            id ? finding.id() : finding.about(),
                            session.office().what(finding, Messages.language()),
                            ""))
                    .filter(choice -> !choice.word().isEmpty())
                    .distinct()
                    .toList();
        }
        return bid
                .map(made -> format.equals("/taxClass") ? NamedChoices.taxClasses(made) : NamedChoices.unitPrices(made))
                .orElse(List.of())
                .stream()
                .map(References::choice)
                .toList();
    }

    private static List<WordChoice> photos(Draft draft) {
        List<WordChoice> choices = new ArrayList<>();
        for (int i = 0; i < draft.rows("/photos"); i++) {
            String row = Pointer.of("/photos", i);
            choices.add(choice(draft.shown(row + "/file"), draft.shown(row + "/caption"), ""));
        }
        choices.removeIf(choice -> choice.word().isEmpty());
        return choices;
    }

    /** Something by its code, with its name and its price. */
    public static WordChoice choice(NamedChoice named) {
        return choice(named.code(), named.name(), named.price());
    }

    private static WordChoice choice(String code, String name, String price) {
        String called = name.isEmpty() ? code : Messages.of("pick.named", code, name);
        return new WordChoice(code, price.isEmpty() ? called : Messages.of("pick.priced", called, price));
    }

    /** The lists of the job whose labels a place names. */
    private static List<String> lists(String format) {
        if (format.matches(".*/drains/0/into")) {
            return List.of("/water/mains", "/water/outlets");
        }
        if (format.matches(".*/(mains|roofLines)/0/into")) {
            return List.of("/water/outlets", "/water/mains");
        }
        if (format.matches(".*/downspouts/0/into")) {
            return List.of("/water/roofLines", "/water/mains");
        }
        if (format.equals("/site/catchment/into")
                || format.equals("/asBuilt/flowTests/0/line")
                || format.equals("/asBuilt/pipes/0/label")) {
            return PIPES;
        }
        if (format.matches("/site/(limits|testPits)/0/wall|.*/drains/0/along|/asBuilt/walls/0/label|.*/finishes/0/wall")
                || format.matches(".*/takesAway/walls(/0)?")) {
            return WALLS;
        }
        if (format.matches(".*/takesAway/pipes(/0)?")) {
            return PIPES;
        }
        if (format.matches(".*/takesAway/downspouts(/0)?")) {
            return List.of("/water/downspouts");
        }
        return format.matches(".*/takesAway/outlets(/0)?") ? List.of("/water/outlets") : List.of();
    }

    private static List<WordChoice> labels(Draft draft, List<String> lists) {
        List<WordChoice> choices = new ArrayList<>();
        List<String> all = new ArrayList<>(lists);
        for (String altered : List.of("/options", "/changes")) {
            for (int i = 0; i < draft.rows(altered); i++) {
                String adds = Pointer.of(altered, i) + "/adds";
                lists.forEach(list -> all.add(adds + list.replaceFirst("^/water", "")));
            }
        }
        for (String list : all) {
            for (int i = 0; i < draft.rows(list); i++) {
                String row = Pointer.of(list, i);
                String label = draft.shown(row + "/label");
                String what = draft.shown(row + "/where") + draft.shown(row + "/what");
                if (!label.isEmpty()) {
                    choices.add(new WordChoice(label, what.isEmpty() ? label : Messages.of("pick.named", label, what)));
                }
            }
        }
        return choices;
    }

    private static String where(Draft draft, String label) {
        for (int i = 0; i < draft.rows("/walls"); i++) {
            String row = Pointer.of("/walls", i);
            if (draft.shown(row + "/label").equals(label)) {
                return draft.shown(row + "/where");
            }
        }
        return "";
    }

    private static List<WordChoice> items(JobSession session) {
        Optional<PriceBook> book = session.book();
        Optional<Bid> bid = session.bid();
        return book.stream()
                .flatMap(read -> read.items().values().stream())
                .filter(item -> item.retired().isEmpty())
                .sorted((one, other) -> one.code().compareTo(other.code()))
                .map(item -> new WordChoice(
                        item.code(),
                        bid.map(priced -> named(item, priced))
                                .orElseGet(() -> Messages.of("pick.named", item.code(), item.name()))))
                .toList();
    }

    private static String named(LineItem item, Bid bid) {
        return Messages.of(
                "pick.item",
                item.code(),
                item.name(),
                bid.sellingPrice(item),
                item.unit().symbol());
    }

    /** The draft with what follows from the item that a line names, where nothing else is written. */
    public static Draft completed(JobSession session, Draft draft, String pointer) {
        String row = Pointer.above(pointer);
        Optional<LineItem> item = session.book().flatMap(book -> book.find(draft.shown(pointer)));
        if (!pointer.matches("/items/\\d+/code") || item.isEmpty()) {
            return draft;
        }
        Draft made = draft;
        if (made.shown(row + "/quantity").isEmpty()) {
            made = made.typed(row + "/quantity", "1 " + item.get().unit().symbol());
        }
        if (made.shown(row + "/section").isEmpty()) {
            Section section = item.get().section();
            made = made.typed(
                    row + "/section", section == Section.WALL ? draft.shown("/walls/0/label") : section.label());
        }
        return made;
    }
}
