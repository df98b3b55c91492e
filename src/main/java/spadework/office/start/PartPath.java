// SPDX-License-Identifier: Apache-2.0
package spadework.office.start;

import java.util.ArrayList;
import java.util.List;
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
    private static final List<String> NAMES = List.of("label", "number", "code", "point", "line", "wall", "file");

    /** A row that a path names and the job does not have. */
    static final class NoSuchRow extends Exception {
        private static final long serialVersionUID = 1L;

        private NoSuchRow(String found, List<String> rows) {
            super("found " + found + "; allowed: " + (rows.isEmpty() ? "" : String.join(", ", rows) + ", or ")
                    + (rows.size() + 1) + " for a new one");
        }
    }

    /** A place, and the label that a row on the way to it gets because it is new. */
    record Place(String pointer, Optional<String> labelPointer, String label) {}

    /**
     * The place below another one.
     *
     * @param makes whether a row with a label of its own is made where the job has none of that label
     * @throws NoSuchRow if the job has no such row
     */
    Place in(Draft job, String above, boolean makes) throws NoSuchRow {
        String pointer = above;
        Optional<String> labelPointer = Optional.empty();
        String label = "";
        for (String part : written.split("/")) {
            if (FileSchema.job()
                    .at(pointer)
                    .filter(spot -> spot.kind() == FieldKind.LIST)
                    .isEmpty()) {
                pointer = Pointer.of(pointer, part);
                continue;
            }
            Optional<Integer> row = row(job, pointer, part);
            boolean labeled = FileSchema.job().at(pointer + "/0/label").isPresent();
            if (row.isEmpty() && makes && labeled) {
                pointer = Pointer.of(pointer, job.rows(pointer));
                labelPointer = Optional.of(pointer + "/label");
                label = part;
            } else if (row.isEmpty()) {
                throw new NoSuchRow("\"" + part + "\" in " + written, names(job, pointer));
            } else {
                pointer = Pointer.of(pointer, row.get());
            }
        }
        return new Place(pointer, labelPointer, label);
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
