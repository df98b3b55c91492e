// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.List;
import java.util.Map;

/** The record of the work as built, begun with what was agreed, so that only what turned out different is typed. */
public final class AsBuiltStart {
    private static final Map<String, String> OF_A_WALL =
            Map.of("/label", "/label", "/length", "/length", "/depth/start", "/depthStart", "/depth/end", "/depthEnd");
    private static final Map<String, String> OF_A_PIPE = Map.of("/label", "/label", "/length", "/length");

    private AsBuiltStart() {}

    /**
     * The job with a row for each wall and pipe that has none yet. Days, levels, tests, and what somebody has to have
     * seen stay open, and so does the length of a drain, which the tape says and the walls do not.
     */
    public static Draft begun(Draft job) {
        Draft made = job;
        made = rows(made, "", "/walls", "/asBuilt/walls", OF_A_WALL);
        for (String pipes : List.of("/drains", "/mains", "/roofLines")) {
            made = rows(made, "/water", pipes, "/asBuilt/pipes", OF_A_PIPE);
        }
        List<String> taken = List.of(job.shown("/accepted/options").split(", "));
        for (int i = 0; i < job.rows("/options"); i++) {
            String option = Pointer.of("/options", i);
            made = taken.contains(job.shown(option + "/label")) ? added(made, option) : made;
        }
        for (int i = 0; i < job.rows("/changes"); i++) {
            String change = Pointer.of("/changes", i);
            made = job.shown(change + "/state").equals("accepted") ? added(made, change) : made;
        }
        return made;
    }

    private static Draft added(Draft job, String alteration) {
        Draft made = rows(job, alteration + "/adds", "/walls", "/asBuilt/walls", OF_A_WALL);
        for (String pipes : List.of("/drains", "/mains", "/roofLines")) {
            made = rows(made, alteration + "/adds", pipes, "/asBuilt/pipes", OF_A_PIPE);
        }
        return made;
    }

    private static Draft rows(Draft job, String base, String list, String built, Map<String, String> keys) {
        Draft made = job;
        for (int i = 0; i < job.rows(base + list); i++) {
            String from = Pointer.of(base + list, i);
            if (!holds(made, built, job.shown(from + "/label"))) {
                int row = made.rows(built);
                made = made.insertedBlank(built, row);
                for (Map.Entry<String, String> key : keys.entrySet()) {
                    String value = job.shown(from + key.getKey());
                    made = value.isEmpty() ? made : made.typed(Pointer.of(built, row) + key.getValue(), value);
                }
                String depth = job.shown(from + "/depth/start");
                String end = Pointer.of(built, row) + "/depthEnd";
                made = list.equals("/walls") && made.shown(end).isEmpty() ? made.typed(end, depth) : made;
            }
        }
        return made;
    }

    private static boolean holds(Draft job, String list, String label) {
        for (int i = 0; i < job.rows(list); i++) {
            if (job.shown(Pointer.of(list, i) + "/label").equals(label)) {
                return true;
            }
        }
        return false;
    }
}
