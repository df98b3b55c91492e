// SPDX-License-Identifier: Apache-2.0
package spadework.office.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.draft.Draft;
import spadework.draft.FieldKind;
import spadework.draft.FileSchema;
import spadework.draft.Pointer;

/**
 * A place in a job as it is named on the command line: keys with a slash between them, and the row of a list by its
 * label or by its number, counted from 1, as {@code walls/A/depth/start} or {@code payments/2/share}.
 */
record PartPath(String written) {
    /** The keys that tell one row of a list from another. */
    private static final List<String> NAMES = List.of("label", "number", "code", "point", "line", "wall", "file", "on");

    /** A row that a path names and the job does not have. */
    static final class NoSuchRow extends Exception {
        private static final long serialVersionUID = 1L;

        private NoSuchRow(String found, List<String> rows) {
            super("found " + found + "; allowed: " + (rows.isEmpty() ? "" : String.join(", ", rows) + ", or ")
                    + (rows.size() + 1) + " for a new one");
        }
    }

    /**
     * A place.
     *
     * @param names what tells the rows on the way to it from others, by pointer, where they are new
     */
    record Place(String pointer, Map<String, String> names) {}

    /**
     * The place below another one.
     *
     * @param makes whether a row is made where the job has none of that name
     * @throws NoSuchRow if the job has no such row
     */
    Place in(Draft job, String above, boolean makes) throws NoSuchRow {
        String pointer = above;
        Map<String, String> made = new LinkedHashMap<>();
        for (String part : written.split("/")) {
            String list = pointer;
            if (FileSchema.job()
                    .at(list)
                    .filter(spot -> spot.kind() == FieldKind.LIST)
                    .isEmpty()) {
                pointer = Pointer.of(list, part);
                continue;
            }
            Optional<String> name = makes ? nameKey(list) : Optional.empty();
            Optional<Integer> row = row(job, list, part);
            if (row.isEmpty() && name.isEmpty()) {
                throw new NoSuchRow("\"" + part + "\" in " + written, names(job, list));
            }
            pointer = Pointer.of(list, row.orElse(job.rows(list)));
            if (name.isPresent() && job.shown(Pointer.of(pointer, name.get())).isEmpty()) {
                made.put(Pointer.of(pointer, name.get()), part);
            }
        }
        return new Place(pointer, made);
    }

    /** The key by which a row of that list is known; empty for a list whose rows are only counted. */
    private static Optional<String> nameKey(String list) {
        return NAMES.stream()
                .filter(key ->
                        FileSchema.job().at(Pointer.of(list, 0) + "/" + key).isPresent())
                .findFirst();
    }

    private static Optional<Integer> row(Draft job, String list, String name) {
        List<String> names = names(job, list);
        if (names.contains(name)) {
            return Optional.of(names.indexOf(name));
        }
        boolean number = name.matches("[1-9]\\d{0,2}") && Integer.parseInt(name) <= names.size() + 1;
        return number ? Optional.of(Integer.parseInt(name) - 1) : Optional.empty();
    }

    private static List<String> names(Draft job, String list) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < job.rows(list); i++) {
            String row = Pointer.of(list, i);
            names.add(NAMES.stream()
                    .map(key -> job.shown(Pointer.of(row, key)))
                    .filter(name -> !name.isEmpty())
                    .findFirst()
                    .orElse(Integer.toString(i + 1)));
        }
        return names;
    }
}
