// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import spadework.draft.DraftValue.Entries;
import spadework.draft.DraftValue.Rows;

/**
 * A kind of job that a company does again and again.
 *
 * @param written what the company decides alike each time; a new job has it written
 * @param assumed what the house decides; a job is priced by it until somebody has looked
 */
public record UsualJob(String name, Draft written, Draft assumed) {
    /** What names a row or ties it to another belongs to one job. */
    private static final Set<String> OF_ONE_JOB = Set.of("/label", "/into", "/along", "/what", "/where", "/faces");

    private static final List<String> WALL =
            List.of("/kind", "/footing", "/strip", "/finish", "/digging/access", "/digging/protection");
    private static final List<String> LISTS = List.of("/protection", "/excluded", "/assumed", "/terms");
    private static final List<String> PIPES = List.of("/water/drains", "/water/mains", "/water/roofLines");
    private static final List<String> PIPE = List.of("/label", "/into", "/item", "/teeAt", "/trench");

    /** The job with all that this kind of job decides; what was measured stays. */
    public Draft onto(Draft draft) {
        Draft[] made = {draft};
        lists(written.root(), "", (list, rows) -> {
            if (made[0].rows(list) == 0) {
                made[0] = made[0].with(list, rows);
            }
        });
        leaves(written.root(), "", (place, value) -> {
            boolean own = OF_ONE_JOB.stream().anyMatch(place::endsWith);
            for (String at : places(made[0], place)) {
                made[0] = own ? made[0] : made[0].with(at, value);
            }
        });
        return made[0];
    }

    /** What the job is priced by that is not written in it. */
    public Assumptions in(Draft draft) {
        Assumptions[] made = {WorkedAssumptions.in(draft)};
        leaves(assumed.root(), "", (place, value) -> {
            Draft one = new Draft(Entries.NONE, draft.outline()).with("/value", value);
            for (String at : places(made[0].filled(), place)) {
                made[0] = made[0].and(at, one.shown("/value"), WorkedAssumptions.kind(at));
            }
        });
        return WorkedAssumptions.last(made[0]);
    }

    /** What a job has decided, kept as a kind of job of its own. */
    public UsualJob of(Draft job, String called) {
        Draft kept = Draft.empty();
        for (String key : WALL) {
            kept = copied(job, kept, "/walls/0" + key);
        }
        if (kept.rows("/walls") > 0) {
            kept = kept.typed("/walls/0/label", "A");
        }
        for (String list : PIPES) {
            for (int i = 0; i < job.rows(list); i++) {
                for (String key : PIPE) {
                    kept = copied(job, kept, Pointer.of(list, i) + key);
                }
            }
        }
        for (int i = 0; i < job.rows("/water/outlets"); i++) {
            for (String key : List.of("/label", "/kind", "/pit", "/dischargeTrench")) {
                kept = copied(job, kept, Pointer.of("/water/outlets", i) + key);
            }
        }
        for (String list : LISTS) {
            kept = copied(job, kept, list);
        }
        return new UsualJob(called, kept, assumed);
    }

    private static Draft copied(Draft from, Draft to, String place) {
        return from.at(place).map(value -> to.with(place, value)).orElse(to);
    }

    /** The places that a place with an asterisk for the row stands for in a draft. */
    private static List<String> places(Draft draft, String place) {
        int star = place.indexOf("/*");
        if (star < 0) {
            return List.of(place);
        }
        List<String> places = new ArrayList<>();
        String list = place.substring(0, star);
        for (int i = 0; i < draft.rows(list); i++) {
            places.addAll(places(draft, Pointer.of(list, i) + place.substring(star + 2)));
        }
        return places;
    }

    private static void lists(DraftValue value, String at, BiConsumer<String, Rows> each) {
        if (value instanceof Rows rows) {
            each.accept(at, rows);
        } else if (value instanceof Entries entries) {
            entries.values().forEach((key, inside) -> lists(inside, Pointer.of(at, key), each));
        }
    }

    /** Each value with its place; of a list of groups those of its first row, under an asterisk. */
    private static void leaves(DraftValue value, String at, BiConsumer<String, DraftValue> each) {
        if (value instanceof Entries entries) {
            entries.values().forEach((key, inside) -> leaves(inside, Pointer.of(at, key), each));
        } else if (value instanceof Rows rows
                && !rows.values().isEmpty()
                && rows.values().get(0) instanceof Entries row) {
            leaves(row, at + "/*", each);
        } else {
            each.accept(at, value);
        }
    }
}
