// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import spadework.ground.BodyKind;
import spadework.ground.DigBodies;
import spadework.job.Downspout;
import spadework.job.FootingDrain;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.SiteLimit;
import spadework.job.SolidRun;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.measure.Series;
import spadework.takeoff.Cleanouts;
import spadework.wording.Wording;

/** The plan for whoever cannot see it: the same things in sentences. */
public final class PlanInWords {
    private static final Wording WORDS = Wording.beside(PlanInWords.class);

    private PlanInWords() {}

    static String of(Job job) {
        return of(job, AddedParts.NONE);
    }

    static String of(Job job, AddedParts extra) {
        StringJoiner text = new StringJoiner(" ");
        House house = job.site().house();
        text.add(WORDS.get("plan-in-words.plan-house-seen-from"));
        text.add(WORDS.get(
                "plan-in-words.house-from-east-to",
                house.eastWest().text(),
                house.northSouth().text()));
        PlaceWords.front(job)
                .ifPresent(front -> text.add(WORDS.get(
                        "plan-in-words.street-side",
                        name(front),
                        house.door()
                                .map(door -> ", with the front door " + door.text() + " from its "
                                        + (OutlineSpot.isAcross(front) ? "west" : "north") + " corner")
                                .orElse(""))));
        job.walls().forEach(wall -> text.add(said(extra, wall.label()) + wall(wall)));
        job.water().drains().forEach(drain -> text.add(said(extra, drain.label()) + drain(drain, job)));
        job.water().mains().forEach(main -> text.add(said(extra, main.label()) + main(main)));
        job.water().roofLines().forEach(line -> text.add(said(extra, line.label()) + roofLine(line, job)));
        dug(job).ifPresent(text::add);
        job.water().outlets().forEach(outlet -> text.add(outlet(outlet, job)));
        job.site().limits().forEach(limit -> text.add(limit(limit)));
        return text.toString();
    }

    /** How wide the ground lies open at grade. */
    private static Optional<String> dug(Job job) {
        List<String> widths = DigBodies.of(job).stream()
                .filter(body -> body.kind() != BodyKind.WINDOW_WELL)
                .map(body -> WORDS.get(
                        "plan-in-words.dug-body",
                        DugWidths.name(body),
                        DugWidths.atGrade(body).text()))
                .toList();
        return widths.isEmpty() ? Optional.empty() : Optional.of(WORDS.get("plan-in-words.dug", Series.text(widths)));
    }

    private static String said(AddedParts extra, String label) {
        return extra.has(label) ? extra.sentence() : "";
    }

    private static String wall(Wall wall) {
        String side = wall.faces().name().toLowerCase(Locale.ROOT);
        return WORDS.get(
                "plan-in-words.wall",
                called("Wall", wall.label()),
                wall.where(),
                side,
                wall.length().text());
    }

    private static String cleanouts(FootingDrain drain, int each) {
        boolean both = drain.teeAt() == TeeAt.MIDDLE;
        String more = each == 1 ? "" : " and " + (each - 1) * (both ? 2 : 1) + " between there and its outflow";
        return " It has a cleanout at %s%s.".formatted(both ? "each high end" : "its high end", more);
    }

    private static String drain(FootingDrain drain, Job job) {
        String tee = switch (drain.teeAt()) {
            case START -> "from its start";
            case MIDDLE -> "from its middle";
            case END -> "from its end";
        };
        return WORDS.get(
                        "plan-in-words.drain",
                        called("Footing drain", drain.label()),
                        named("wall", drain.along()),
                        tee,
                        drain.into())
                + cleanouts(drain, Cleanouts.fromEachEnd(job, drain));
    }

    private static String main(SolidRun main) {
        return WORDS.get(
                "plan-in-words.long-leads-to",
                called("Solid pipe", main.label()),
                main.length().text(),
                main.into());
    }

    private static String roofLine(SolidRun line, Job job) {
        List<String> downspouts = job.water().downspouts().stream()
                .filter(downspout -> downspout.into().equals(line.label()))
                .map(Downspout::label)
                .toList();
        String from = downspouts.isEmpty() ? "roof water" : "the water of " + named("downspout", downspouts);
        return WORDS.get(
                "plan-in-words.long-carries-to",
                called("Roof water pipe", line.label()),
                line.length().text(),
                from,
                line.into());
    }

    private static String name(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private static String outlet(Outlet outlet, Job job) {
        String kind = switch (outlet.kind()) {
            case DAYLIGHT -> "an outlet to daylight";
            case SUMP -> OutletDrawing.isIndoors(outlet) ? "a sump inside the house" : "a sump";
            case APPROVED_STORM -> "an approved storm connection";
        };
        String pumped = outlet.kind() == OutletKind.SUMP
                ? outlet.discharge()
                        .map(length -> ", with a discharge pipe " + length.text() + " long")
                        .orElse("")
                : "";
        String place = PlaceWords.side(job, outlet.what())
                .map(side -> WORDS.get("plan-in-words.outlet-side", name(side)))
                .orElse(WORDS.get("plan-in-words.outlet-side-unknown"));
        return WORDS.get("plan-in-words.outlet", outlet.label(), kind, outlet.what(), pumped) + " " + place;
    }

    private static String limit(SiteLimit limit) {
        return WORDS.get(
                "plan-in-words.before-wall",
                PlanWords.limit(limit.kind()),
                limit.distance().text(),
                limit.wall());
    }

    /** The label behind its kind, unless the label says the kind itself. */
    private static String called(String kind, String label) {
        return label.toLowerCase(Locale.ROOT).contains(kind.toLowerCase(Locale.ROOT)) ? label : kind + " " + label;
    }

    /** {@code wall A}, {@code walls A and B}, {@code walls A, B, and C}. */
    private static String named(String noun, List<String> labels) {
        if (labels.size() == 1) {
            return called(noun, labels.get(0));
        }
        boolean said = labels.stream().anyMatch(label -> called(noun, label).equals(label));
        return (said ? "" : noun + "s ") + Series.text(labels);
    }
}
