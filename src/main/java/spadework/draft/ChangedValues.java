// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.draft.DraftValue.Entries;

/** What one edition of a file says otherwise than another, value by value. */
public final class ChangedValues {
    private static final int TOLD = 5;
    private static final int LONGEST = 60;
    private static final String NOTHING = "—";

    private ChangedValues() {}

    /** The changes in words, each as {@code title: "Old" → "New"}; empty where either is not one JSON object. */
    public static List<String> between(String before, String now) {
        Optional<Entries> old = DraftText.read(before);
        Optional<Entries> current = DraftText.read(now);
        List<String> lines = new ArrayList<>();
        if (old.isPresent() && current.isPresent()) {
            Map<String, String> from = Leaves.of(old.get());
            Map<String, String> to = Leaves.of(current.get());
            to.forEach((place, value) -> {
                if (!value.equals(from.get(place))) {
                    lines.add(place + ": " + shown(from.get(place)) + " → " + shown(value));
                }
            });
            from.forEach((place, value) -> {
                if (!to.containsKey(place)) {
                    lines.add(place + ": " + shown(value) + " → " + NOTHING);
                }
            });
        }
        return lines;
    }

    /** The same on one line, the first few of them. */
    public static String described(String before, String now) {
        List<String> all = between(before, now);
        if (all.isEmpty()) {
            return before.equals(now) ? "" : "its layout, or what cannot be read as JSON";
        }
        String first = String.join("; ", all.subList(0, Math.min(TOLD, all.size())));
        return all.size() > TOLD ? first + "; and " + (all.size() - TOLD) + " more" : first;
    }

    private static String shown(String value) {
        if (value == null) {
            return NOTHING;
        }
        String line = value.replaceAll("\\s+", " ");
        return line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line;
    }
}
