// SPDX-License-Identifier: Apache-2.0
package spadework.office.start;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.draft.Pointer;

/** A part that can be added to a job, with what it says where nothing is said of it. */
public enum JobPart {
    /** A wall like the last one of the job; what was seen of that one is not known of this one. */
    WALL("/walls", "") {
        @Override
        String label(Draft job) {
            return Stream.iterate('A', letter -> (char) (letter + 1))
                    .limit(26)
                    .map(String::valueOf)
                    .filter(letter -> !labels(job).contains(letter))
                    .findFirst()
                    .orElse("");
        }

        @Override
        Draft begun(Draft job, String row) {
            Draft begun = job;
            int last = job.rows("/walls") - 1;
            for (String key : List.of("kind", "footing", "strip", "finish", "digging")) {
                Optional<DraftValue> like =
                        last < 0 ? Optional.empty() : job.at(Pointer.of("/walls", last) + "/" + key);
                begun = like.isPresent() ? begun.with(row + "/" + key, like.get()) : begun;
            }
            return with(begun, row, begun.at(row + "/finish").isPresent() ? SEEN : UNLIKE);
        }
    },
    DRAIN("/water/drains", "D") {
        @Override
        Draft begun(Draft job, String row) {
            return job.typed(row + "/teeAt", "end");
        }
    },
    MAIN("/water/mains", "M"),
    ROOF_LINE("/water/roofLines", "R"),
    DOWNSPOUT("/water/downspouts", "DS"),
    OUTLET("/water/outlets", "O"),
    OPTION("/options", "OP"),
    /** Money that came in. */
    PAYMENT("/received", ""),
    FLOW_TEST("/asBuilt/flowTests", ""),
    /** The record of what was built: days, and walls and pipes by their labels. */
    AS_BUILT("/asBuilt", "") {
        @Override
        String row(Draft job) {
            return list();
        }
    };

    private static final Map<String, String> SEEN = Map.of(
            "from", "0 ft",
            "condition/surface", "unknown",
            "condition/cracks", "unknown",
            "condition/horizontalCrack", "unknown",
            "condition/displaced", "unknown",
            "condition/footingUndermined", "unknown");
    private static final Map<String, String> UNLIKE = unlike();

    private final String list;
    private final String letters;

    JobPart(String list, String letters) {
        this.list = list;
        this.letters = letters;
    }

    private static Map<String, String> unlike() {
        Map<String, String> values = new LinkedHashMap<>(SEEN);
        values.put("finish/system", "coating");
        values.put("finish/dryFilm", "60 mil");
        return values;
    }

    /** The part with that word: {@code wall}, {@code roof-line}. */
    public static Optional<JobPart> of(String word) {
        return Arrays.stream(values()).filter(part -> part.word().equals(word)).findFirst();
    }

    /** The word by which it is called. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The list of the job file in which it stands. */
    String list() {
        return list;
    }

    /** The pointer of the row that is added. */
    String row(Draft job) {
        return Pointer.of(list, job.rows(list));
    }

    /** The label that it gets where none is given; empty for a part without one. */
    String label(Draft job) {
        if (letters.isEmpty()) {
            return "";
        }
        int next = 1;
        while (labels(job).contains(letters + next)) {
            next++;
        }
        return letters + next;
    }

    /** The job with what the part says where nothing is said of it. */
    Draft begun(Draft job, String row) {
        return job;
    }

    List<String> labels(Draft job) {
        return IntStream.range(0, job.rows(list))
                .mapToObj(index -> job.shown(Pointer.of(list, index) + "/label"))
                .toList();
    }

    private static Draft with(Draft job, String row, Map<String, String> values) {
        Draft changed = job;
        for (Map.Entry<String, String> value : values.entrySet()) {
            changed = changed.typed(row + "/" + value.getKey(), value.getValue());
        }
        return changed;
    }
}
