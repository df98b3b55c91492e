// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import spadework.draft.Draft;
import spadework.draft.DraftValue;

/** What reads otherwise in a job file than in the one that a proposal was made from, place by place. */
public final class JobDifference {
    /** What may follow the proposal: see {@link spadework.job.AfterAcceptance}. */
    private static final Set<String> FREE = Set.of(
            "/$schema",
            "/format",
            "/photos",
            "/acceptedStops",
            "/notes",
            "/site/locateTicket",
            "/site/locateUntil",
            "/signing",
            "/accepted",
            "/changes",
            "/received",
            "/asBuilt",
            "/closed");

    private static final int TOLD = 6;

    private JobDifference() {}

    /** The places in words, at most a handful; empty where nothing differs that was proposed. */
    static String described(Draft issued, Draft now) {
        Map<String, String> then = new TreeMap<>();
        Map<String, String> today = new TreeMap<>();
        leaves("", issued.root(), then);
        leaves("", now.root(), today);
        Map<String, String> moved = new TreeMap<>();
        then.forEach((place, value) -> {
            if (!value.equals(today.get(place))) {
                moved.put(place, value + " → " + today.getOrDefault(place, "taken out"));
            }
        });
        today.forEach((place, value) -> {
            if (!then.containsKey(place)) {
                moved.put(place, "new, " + value);
            }
        });
        List<String> words = new ArrayList<>();
        moved.forEach((place, change) -> words.add(place.substring(1) + ": " + change));
        int more = words.size() - TOLD;
        return more > 0
                ? String.join("; ", words.subList(0, TOLD)) + "; and " + more + " more"
                : String.join("; ", words);
    }

    private static void leaves(String place, DraftValue value, Map<String, String> into) {
        if (FREE.contains(place)) {
            return;
        }
        if (value instanceof DraftValue.Entries entries) {
            entries.values().forEach((key, inside) -> leaves(place + "/" + key, inside, into));
        } else if (value instanceof DraftValue.Rows rows) {
            for (int i = 0; i < rows.values().size(); i++) {
                leaves(place + "/" + i, rows.values().get(i), into);
            }
        } else if (value instanceof DraftValue.Text text) {
            into.put(place, "\"" + text.words() + "\"");
        } else if (value instanceof DraftValue.Bare bare) {
            into.put(place, bare.token());
        }
    }
}
