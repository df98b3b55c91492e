// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import spadework.draft.Assumption.Kind;
import spadework.measure.Length;
import spadework.measure.UnreadableMeasure;

/** What follows from the rest of a job as long as nobody says otherwise: a title, corners, what a drain runs along. */
final class WorkedAssumptions {
    private static final List<String> CLOCKWISE = List.of("north", "east", "south", "west");
    private static final Pattern SEEN = Pattern.compile("/site/(soil|rain|house|yearBuilt).*"
            + "|.*/condition/.*|.*(Invert|Grade|[lL]evel)"
            + "|/walls/\\d+/(length|faces|depth.*)|/water/[a-zA-Z]+/\\d+/(length|roof|what|discharge|pit.*)");
    private static final Pattern WORDS =
            Pattern.compile("/customer/names(/0)?|/site/address/(street|city|zip)|.*/items/\\d+/reason");
    /** Weeks from the proposal to the first day of work, and from there to the last. */
    private static final int WEEKS_TO_START = 5;

    private static final int WEEKS_OF_WORK = 4;

    private WorkedAssumptions() {}

    /** Who can say what stands at a place. */
    static Kind kind(String place) {
        return WORDS.matcher(place).matches()
                ? Kind.UNWRITTEN
                : SEEN.matcher(place).matches() ? Kind.SEEN : Kind.DECIDED;
    }

    /** What follows from the walls as they are written. */
    static Assumptions in(Draft draft) {
        Assumptions made = Assumptions.none(draft);
        int walls = draft.rows("/walls");
        for (int i = 0; i < walls; i++) {
            String wall = Pointer.of("/walls", i);
            made = made.and(wall + "/faces", CLOCKWISE.get(i % CLOCKWISE.size()), Kind.SEEN);
            made = made.and(wall + "/where", made.filled().shown(wall + "/faces") + " wall", Kind.DECIDED);
            made = made.and(wall + "/from", "0 ft", Kind.DECIDED);
        }
        return made;
    }

    /** What follows once all measures stand, written or assumed. */
    static Assumptions last(Assumptions before) {
        Assumptions made = before;
        Draft job = before.filled();
        made = made.and("/title", title(job), Kind.DECIDED);
        made = made.and("/site/house/eastWest", side(job, "north", "south"), Kind.SEEN);
        made = made.and("/site/house/northSouth", side(job, "east", "west"), Kind.SEEN);
        made = corners(made);
        for (int i = 0; i < job.rows("/water/drains"); i++) {
            made = made.and(Pointer.of("/water/drains", i) + "/along", String.join(", ", labels(job)), Kind.DECIDED);
        }
        made = levels(made);
        made = made.and("/restoration/regrade", sum(job), Kind.DECIDED);
        Optional<LocalDate> issued = day(job.shown("/issued"));
        if (issued.isPresent()) {
            LocalDate start =
                    issued.get().plusWeeks(WEEKS_TO_START).with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY));
            made = made.and("/schedule/earliestStart", start.toString(), Kind.DECIDED);
            LocalDate first =
                    day(made.filled().shown("/schedule/earliestStart")).orElse(start);
            made = made.and(
                    "/schedule/latestFinish", first.plusWeeks(WEEKS_OF_WORK).toString(), Kind.DECIDED);
        }
        return made;
    }

    /** A solid pipe begins where its drain ends, and ends at the level of its outlet, where those were measured. */
    private static Assumptions levels(Assumptions before) {
        Assumptions made = before;
        Draft job = before.filled();
        for (String list : List.of("/water/mains", "/water/roofLines")) {
            for (int i = 0; i < job.rows(list); i++) {
                String pipe = Pointer.of(list, i);
                for (int j = 0; j < job.rows("/water/drains"); j++) {
                    String drain = Pointer.of("/water/drains", j);
                    boolean ends = job.shown(drain + "/into").equals(job.shown(pipe + "/label"))
                            && job.shown(drain + "/teeAt").equals("end");
                    made = ends ? made.and(pipe + "/startInvert", job.shown(drain + "/endInvert"), Kind.DECIDED) : made;
                }
                for (int j = 0; list.equals("/water/mains") && j < job.rows("/water/outlets"); j++) {
                    String outlet = Pointer.of("/water/outlets", j);
                    boolean there = job.shown(pipe + "/into").equals(job.shown(outlet + "/label"));
                    made = there ? made.and(pipe + "/endInvert", job.shown(outlet + "/level"), Kind.DECIDED) : made;
                }
            }
        }
        return made;
    }

    private static String title(Draft job) {
        List<String> wheres = new ArrayList<>();
        for (int i = 0; i < job.rows("/walls"); i++) {
            String where = job.shown(Pointer.of("/walls", i) + "/where");
            if (!where.isEmpty() && !wheres.contains(where)) {
                wheres.add(where);
            }
        }
        if (wheres.isEmpty()) {
            return "";
        }
        String all = wheres.size() == 1
                ? wheres.get(0)
                : String.join(", ", wheres.subList(0, wheres.size() - 1))
                        + (wheres.size() > 2 ? "," : "")
                        + " and "
                        + wheres.get(wheres.size() - 1);
        return Character.toUpperCase(all.charAt(0)) + all.substring(1);
    }

    private static List<String> labels(Draft job) {
        List<String> labels = new ArrayList<>();
        for (int i = 0; i < job.rows("/walls"); i++) {
            labels.add(job.shown(Pointer.of("/walls", i) + "/label"));
        }
        return labels;
    }

    /** The longest reach of walls on two sides that face each other; where none is dug, of all walls. */
    private static String side(Draft job, String one, String other) {
        double longest = 0;
        double any = 0;
        for (int i = 0; i < job.rows("/walls"); i++) {
            String wall = Pointer.of("/walls", i);
            double reach = feet(job, wall + "/from") + feet(job, wall + "/length");
            String faces = job.shown(wall + "/faces");
            any = Math.max(any, reach);
            longest = faces.equals(one) || faces.equals(other) ? Math.max(longest, reach) : longest;
        }
        double found = longest > 0 ? longest : any;
        return found > 0 ? Length.ofFeet(found).text() : "";
    }

    private static String sum(Draft job) {
        double sum = 0;
        for (int i = 0; i < job.rows("/walls"); i++) {
            sum += feet(job, Pointer.of("/walls", i) + "/length");
        }
        return sum > 0 ? Length.ofFeet(sum).text() : "";
    }

    /** Where a wall that runs to its house's corner meets one that begins there, clockwise. */
    private static Assumptions corners(Assumptions before) {
        Draft job = before.filled();
        if (job.at("/corners").isPresent()) {
            return before;
        }
        Assumptions made = before;
        Map<String, String> sides = Map.of(
                "north", "/site/house/eastWest",
                "south", "/site/house/eastWest",
                "east", "/site/house/northSouth",
                "west", "/site/house/northSouth");
        for (int i = 0; i < job.rows("/walls"); i++) {
            String first = Pointer.of("/walls", i);
            String faces = job.shown(first + "/faces");
            double reach = feet(job, first + "/from") + feet(job, first + "/length");
            boolean full = sides.containsKey(faces) && Math.abs(reach - feet(made.filled(), sides.get(faces))) < 0.05;
            for (int j = 0; full && j < job.rows("/walls"); j++) {
                String second = Pointer.of("/walls", j);
                int next = (CLOCKWISE.indexOf(faces) + 1) % CLOCKWISE.size();
                if (CLOCKWISE.get(next).equals(job.shown(second + "/faces")) && feet(job, second + "/from") == 0) {
                    String row = Pointer.of("/corners", made.filled().rows("/corners"));
                    made = made.and(row + "/first", job.shown(first + "/label") + " end", Kind.DECIDED)
                            .and(row + "/second", job.shown(second + "/label") + " start", Kind.DECIDED)
                            .and(row + "/kind", "outside", Kind.DECIDED);
                }
            }
        }
        return made;
    }

    private static double feet(Draft job, String place) {
        try {
            return Length.parse(job.shown(place)).feet();
        } catch (UnreadableMeasure unreadable) {
            return 0;
        }
    }

    private static Optional<LocalDate> day(String written) {
        try {
            return Optional.of(LocalDate.parse(written));
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }
}
