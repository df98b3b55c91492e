// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import spadework.draft.Draft;
import spadework.draft.Pointer;

/**
 * What a row that is added begins with: a label that is free, and what is plainly the same as in the row above. What
 * has to be seen or measured is never put in.
 */
public final class NewRowValues {
    private static final String LABEL = "/label";
    private static final Map<String, String> PREFIX = Map.of(
            "/water/drains",
            "D",
            "/water/mains",
            "M",
            "/water/roofLines",
            "R",
            "/water/downspouts",
            "DS",
            "/water/outlets",
            "O",
            "/water/candidates",
            "C",
            "/options",
            "OP");
    private static final String CHANGES = "/changes";
    private static final List<String> PIPES = List.of("/water/drains", "/water/mains", "/water/roofLines");

    /** What a house's walls and a firm's trenches have in common. */
    private static final Map<String, List<String>> AS_ABOVE = Map.of(
            "/walls",
                    List.of(
                            "/kind",
                            "/strip",
                            "/footing/thickness",
                            "/footing/projection",
                            "/finish/system",
                            "/finish/item",
                            "/finish/dryFilm",
                            "/digging/access",
                            "/digging/bottomWidth",
                            "/digging/protection"),
            "/water/mains", List.of("/item", "/trench/width", "/into"),
            "/water/roofLines", List.of("/item", "/trench/width", "/into"),
            "/water/downspouts", List.of("/into"),
            "/water/drains", List.of("/item", "/into"));

    private NewRowValues() {}

    /** The draft with a row added behind the last of a list. */
    public static Draft added(Draft draft, String list) {
        int index = draft.rows(list);
        String row = Pointer.of(list, index);
        Draft added = draft.insertedBlank(list, index);
        if (list.equals("/walls")) {
            added = added.typed(row + LABEL, free(draft, list, ""));
        } else if (PREFIX.containsKey(list)) {
            added = added.typed(row + LABEL, free(draft, list, PREFIX.get(list)));
        } else if (list.equals(CHANGES)) {
            added = added.typed(row + "/number", Integer.toString(nextNumber(draft)));
        } else if (list.equals("/asBuilt/walls")) {
            added = added.typed(row + LABEL, unrecorded(draft, list, List.of("/walls")));
        } else if (list.equals("/asBuilt/pipes")) {
            added = added.typed(row + LABEL, unrecorded(draft, list, PIPES));
        }
        for (String key : AS_ABOVE.getOrDefault(list, List.of())) {
            String above = index == 0 ? "" : draft.shown(Pointer.of(list, index - 1) + key);
            added = above.isEmpty() ? added : added.typed(row + key, above);
        }
        return into(list.equals("/water/downspouts") ? withRoofLine(added) : added, list, row);
    }

    /** The first downspout of a job brings the roof line that it runs into. */
    private static Draft withRoofLine(Draft draft) {
        String lines = "/water/roofLines";
        if (draft.rows(lines) > 0) {
            return draft;
        }
        String row = Pointer.of(lines, 0);
        Draft added = draft.insertedBlank(lines, 0)
                .typed(row + LABEL, PREFIX.get(lines) + "1")
                .typed(row + "/trench/width", "12 in")
                .typed(row + "/trench/depth", "2 ft");
        return into(added, lines, row);
    }

    /** The draft with a row once more behind itself; the copy gets a label that is free. */
    static Draft doubled(Draft draft, String list, int row) {
        if (list.equals(CHANGES)) {
            return draft.duplicated(list, row)
                    .without(Pointer.of(list, row + 1) + "/state")
                    .without(Pointer.of(list, row + 1) + "/decision")
                    .typed(Pointer.of(list, row + 1) + "/number", Integer.toString(nextNumber(draft)));
        }
        boolean labeled = list.equals("/walls") || PREFIX.containsKey(list);
        Draft doubled = draft.duplicated(list, row);
        String label = Pointer.of(list, row + 1) + LABEL;
        return labeled ? doubled.typed(label, free(draft, list, PREFIX.getOrDefault(list, ""))) : doubled;
    }

    /** Water goes to the only place there is. */
    private static Draft into(Draft draft, String list, String row) {
        Optional<String> target = switch (list) {
            case "/water/drains" -> only(draft, "/water/mains").or(() -> only(draft, "/water/outlets"));
            case "/water/mains", "/water/roofLines" -> only(draft, "/water/outlets");
            case "/water/downspouts" -> only(draft, "/water/roofLines");
            default -> Optional.empty();
        };
        boolean open = draft.shown(row + "/into").isEmpty();
        return target.isPresent() && open ? draft.typed(row + "/into", target.get()) : draft;
    }

    private static Optional<String> only(Draft draft, String list) {
        return draft.rows(list) == 1
                ? Optional.of(draft.shown(list + "/0" + LABEL)).filter(l -> !l.isEmpty())
                : Optional.empty();
    }

    private static int nextNumber(Draft draft) {
        int highest = 0;
        for (int i = 0; i < draft.rows(CHANGES); i++) {
            String number = draft.shown(Pointer.of(CHANGES, i) + "/number");
            highest = Math.max(highest, number.matches("\\d{1,3}") ? Integer.parseInt(number) : 0);
        }
        return highest + 1;
    }

    /** The first label of the job that is not recorded as built; empty where all are. */
    private static String unrecorded(Draft draft, String built, List<String> lists) {
        TreeSet<String> recorded = new TreeSet<>();
        for (int i = 0; i < draft.rows(built); i++) {
            recorded.add(draft.shown(Pointer.of(built, i) + LABEL));
        }
        for (String list : lists) {
            for (int i = 0; i < draft.rows(list); i++) {
                String label = draft.shown(Pointer.of(list, i) + LABEL);
                if (!recorded.contains(label)) {
                    return label;
                }
            }
        }
        return "";
    }

    private static String free(Draft draft, String list, String prefix) {
        TreeSet<String> taken = new TreeSet<>();
        for (int i = 0; i < draft.rows(list); i++) {
            taken.add(draft.shown(Pointer.of(list, i) + LABEL));
        }
        for (int i = 0; ; i++) {
            String label = prefix.isEmpty() ? letters(i) : prefix + (i + 1);
            if (!taken.contains(label)) {
                return label;
            }
        }
    }

    private static String letters(int index) {
        String letter = Character.toString('A' + index % 26);
        return index < 26 ? letter : letters(index / 26 - 1) + letter;
    }
}
