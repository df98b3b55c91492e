// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.table.AbstractTableModel;
import spadework.draft.FieldKind;
import spadework.draft.FileSchema;
import spadework.draft.SchemaField;
import spadework.form.kit.Messages;

/** The values of an item of the price book: what stands there, and beside it what is to stand there. */
public final class ItemValuesModel extends AbstractTableModel {
    public static final int THEN = 2;
    private static final String ITEM = "/items/0/";
    private static final String NOTE = "notes/0";
    private static final List<String> ALWAYS = List.of("goodUntil");
    private static final List<String> PLACES = places();

    private final Map<String, String> now = new LinkedHashMap<>();
    private final Map<String, String> then = new LinkedHashMap<>();
    private final List<String> shown = new ArrayList<>();

    /** All places of an item that are typed; code, history and end are written by their own steps. */
    private static List<String> places() {
        return FileSchema.book().places().stream()
                .filter(place -> place.startsWith(ITEM))
                .map(place -> place.substring(ITEM.length()))
                .filter(place -> !place.matches("code|(history|retired)(/.*)?"))
                .filter(place -> isSeries(place) || place.equals(NOTE) || !isSeries(place.replaceAll("/0$", "")))
                .filter(place -> isSeries(place)
                        || spot(place)
                                .filter(spot -> spot.kind() != FieldKind.GROUP && spot.kind() != FieldKind.LIST)
                                .isPresent())
                .toList();
    }

    private static Optional<SchemaField> spot(String place) {
        return FileSchema.book().at(ITEM + place.replaceAll("/\\d+$", "/0"));
    }

    /** A list of a few words stands in one row. */
    private static boolean isSeries(String place) {
        return spot(place).filter(spot -> spot.kind() == FieldKind.LIST).isPresent()
                && spot(place + "/0")
                        .filter(spot -> spot.kind() == FieldKind.CHOICE)
                        .isPresent();
    }

    /**
     * Shows an item.
     *
     * @param values as they stand in the book, by their place in the item
     * @param all whether to show also what it says nothing of
     */
    void show(Map<String, String> values, boolean all) {
        now.clear();
        then.clear();
        shown.clear();
        for (String place : PLACES) {
            if (place.equals(NOTE)) {
                int notes = (int) values.keySet().stream()
                        .filter(key -> key.startsWith("notes/"))
                        .count();
                IntStream.range(0, notes + (all ? 1 : 0))
                        .forEach(i -> put("notes/" + i, values.getOrDefault("notes/" + i, "")));
            } else if (isSeries(place)) {
                String words = values.entrySet().stream()
                        .filter(value -> value.getKey().startsWith(place + "/"))
                        .map(Map.Entry::getValue)
                        .collect(Collectors.joining(", "));
                if (all || !words.isEmpty()) {
                    put(place, words);
                }
            } else if (all || values.containsKey(place) || ALWAYS.contains(place)) {
                put(place, values.getOrDefault(place, ""));
            }
        }
        fireTableDataChanged();
    }

    private void put(String place, String value) {
        now.put(place, value);
        then.put(place, value);
        shown.add(place);
    }

    /** What is to be written where: the values that differ from those of the book. */
    Map<String, String> changed() {
        Map<String, String> changed = new LinkedHashMap<>();
        then.forEach((place, value) -> {
            if (!value.equals(now.get(place))) {
                changed.put(place, value);
            }
        });
        return changed;
    }

    String place(int row) {
        return shown.get(row);
    }

    boolean isChanged(int row) {
        return !then.get(place(row)).equals(now.get(place(row)));
    }

    /** What a value may be, where it is one of a few words. */
    List<String> choices(int row) {
        Optional<SchemaField> spot = spot(place(row));
        return isYesOrNo(place(row))
                ? List.of("", Messages.of("choice.true"), Messages.of("choice.false"))
                : spot.filter(one -> one.kind() == FieldKind.CHOICE)
                        .map(SchemaField::choices)
                        .orElse(List.of());
    }

    static String name(String place) {
        return Messages.of("item." + place.replaceAll("/\\d+$", "").replace('/', '.'));
    }

    @Override
    public int getRowCount() {
        return shown.size();
    }

    @Override
    public int getColumnCount() {
        return 3;
    }

    @Override
    public String getColumnName(int column) {
        return Messages.of("item.column." + column);
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column == THEN;
    }

    @Override
    public Object getValueAt(int row, int column) {
        String place = place(row);
        return column == 0 ? name(place) : shown(place, column == 1 ? now.get(place) : then.get(place));
    }

    private static String shown(String place, String value) {
        return isYesOrNo(place) && !value.isEmpty() ? Messages.or("choice." + value, value) : value;
    }

    private static String written(String place, String shown) {
        return !isYesOrNo(place)
                ? shown
                : shown.equals(Messages.of("choice.true"))
                        ? "true"
                        : shown.equals(Messages.of("choice.false")) ? "false" : shown;
    }

    private static boolean isYesOrNo(String place) {
        return spot(place).filter(spot -> spot.kind() == FieldKind.YES_OR_NO).isPresent();
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        if (row < shown.size()) {
            then.put(
                    place(row),
                    value == null ? "" : written(place(row), value.toString().strip()));
            fireTableRowsUpdated(row, row);
        }
    }
}
