// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.register.Event;

/**
 * What an office says of a job's folder in lists, and the words by which it is found.
 *
 * @param customer names, with commas
 * @param words number, title, people, address, items, notes and what was seen, each on a line
 */
public record FolderSummary(FolderHead head, String customer, String words) {
    private static final List<String> SEARCHED =
            List.of("/site/address", "/observations", "/items", "/notes", "/walls");
    private static final Set<String> UNSAID = Set.of("photos", "$schema", "format");
    private static final Pattern EVENT = Pattern.compile("\"event\":\"([a-z ]+)\"");

    /**
     * From the bytes of a folder's job and register.
     *
     * @param job the job's file; one that cannot be read gives a summary without words
     * @param register the chain
     */
    public static FolderSummary of(String name, byte[] job, byte[] register) {
        FolderStanding stands = FolderStanding.after(events(new String(register, StandardCharsets.UTF_8)));
        Optional<Draft> read = Draft.read(new String(job, StandardCharsets.UTF_8));
        if (read.isEmpty()) {
            return new FolderSummary(new FolderHead(name, "", "", stands), "", "");
        }
        Draft draft = read.get();
        Set<String> words = new LinkedHashSet<>();
        words.add(draft.shown("/number"));
        words.add(draft.shown("/title"));
        List<String> names = new ArrayList<>();
        for (int i = 0; i < draft.rows("/customer/names"); i++) {
            names.add(draft.shown("/customer/names/" + i));
        }
        words.addAll(names);
        for (String place : SEARCHED) {
            draft.at(place).ifPresent(value -> collect(value, words));
        }
        return new FolderSummary(
                new FolderHead(name, draft.shown("/number"), draft.shown("/title"), stands),
                String.join(", ", names),
                String.join("\n", words));
    }

    private static List<Event> events(String register) {
        List<Event> events = new ArrayList<>();
        for (String line : register.split("\n")) {
            Matcher event = EVENT.matcher(line);
            if (event.find()) {
                Event.of(event.group(1)).ifPresent(events::add);
            }
        }
        return events;
    }

    private static void collect(DraftValue value, Set<String> words) {
        if (value instanceof DraftValue.Entries entries) {
            entries.values().forEach((key, inside) -> {
                if (!UNSAID.contains(key)) {
                    collect(inside, words);
                }
            });
        } else if (value instanceof DraftValue.Rows rows) {
            rows.values().forEach(inside -> collect(inside, words));
        } else if (value instanceof DraftValue.Text text) {
            words.add(text.words());
        }
    }
}
