// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import spadework.ground.BodyKind;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
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
import spadework.measure.Length;
import spadework.place.OutlineSpot;
import spadework.place.PlaceWords;
import spadework.takeoff.Cleanouts;
import spadework.wording.Wording;

/** The plan for whoever cannot see it: the same things in sentences. */
public final class PlanInWords {
    private static final Wording WORDS = Wording.beside(PlanInWords.class);

    private final Job job;
    private final PlanWords words;
    private final Wording said;

    PlanInWords(Job job, PlanWords words) {
        this.job = job;
        this.words = words;
        this.said = WORDS.in(words.language());
    }

    String of(AddedParts extra) {
        StringJoiner text = new StringJoiner(" ");
        House house = job.site().house();
        text.add(said.get("plan-in-words.plan-house-seen-from"));
        text.add(said.get(
                "plan-in-words.house-from-east-to",
                house.eastWest().text(),
                house.northSouth().text()));
        PlaceWords.front(job).ifPresent(front -> text.add(street(front, house)));
        job.walls().forEach(wall -> text.add(added(extra, wall.label()) + wall(wall)));
        job.water().drains().forEach(drain -> text.add(added(extra, drain.label()) + drain(drain)));
        job.water().mains().forEach(main -> text.add(added(extra, main.label()) + main(main)));
        job.water().roofLines().forEach(line -> text.add(added(extra, line.label()) + roofLine(line)));
        dug().ifPresent(text::add);
        job.water().outlets().forEach(outlet -> text.add(outlet(outlet)));
        job.site().limits().forEach(limit -> text.add(limit(limit)));
        return text.toString();
    }

    private String street(Side front, House house) {
        String side = words.side(front);
        Side corner = OutlineSpot.isAcross(front) ? Side.WEST : Side.NORTH;
        return house.door()
                .map(door -> said.get("plan-in-words.street-side-door", side, door.text(), words.side(corner)))
                .orElseGet(() -> said.get("plan-in-words.street-side", side));
    }

    /** How wide the ground lies open at grade. */
    private Optional<String> dug() {
        List<String> widths = DigBodies.of(job).stream()
                .filter(body -> body.kind() != BodyKind.WINDOW_WELL)
                .map(body -> said.get(
                        "plan-in-words.dug-body",
                        place(body),
                        widthAtGrade(body).text()))
                .toList();
        return widths.isEmpty() ? Optional.empty() : Optional.of(said.get("plan-in-words.dug", words.row(widths)));
    }

    /** Where it is widest: of a wall's trench from the wall's face, of any other from edge to edge. */
    private static Length widthAtGrade(DigBody body) {
        int banks = body.kind() == BodyKind.WALL ? 1 : 2;
        return Length.ofFeet(body.width() + banks * body.out(body.deepest().feet()));
    }

    private String place(DigBody body) {
        return said.get("plan-in-words.dug." + PlanWords.key(body.kind()), body.label());
    }

    private static String added(AddedParts extra, String label) {
        return extra.has(label) ? extra.sentence() : "";
    }

    private String wall(Wall wall) {
        return said.get(
                "plan-in-words.wall",
                called("wall", wall.label()),
                wall.where(),
                words.side(wall.faces()),
                wall.length().text());
    }

    private String cleanouts(FootingDrain drain) {
        boolean both = drain.teeAt() == TeeAt.MIDDLE;
        int each = Cleanouts.fromEachEnd(job, drain);
        int more = (each - 1) * (both ? 2 : 1);
        String ends = both ? "both" : "one";
        return each == 1
                ? said.get("plan-in-words.cleanouts." + ends)
                : said.get("plan-in-words.cleanouts-more." + ends, more);
    }

    private String drain(FootingDrain drain) {
        return said.get(
                        "plan-in-words.drain",
                        called("drain", drain.label()),
                        named("wall", drain.along()),
                        said.get("plan-in-words.tee." + PlanWords.key(drain.teeAt())),
                        drain.into())
                + " " + cleanouts(drain);
    }

    private String main(SolidRun main) {
        return said.get(
                "plan-in-words.long-leads-to",
                called("main", main.label()),
                main.length().text(),
                main.into());
    }

    private String roofLine(SolidRun line) {
        List<String> downspouts = job.water().downspouts().stream()
                .filter(downspout -> downspout.into().equals(line.label()))
                .map(Downspout::label)
                .toList();
        String from = downspouts.isEmpty()
                ? said.get("plan-in-words.roof-water")
                : said.get("plan-in-words.water-of", named("downspout", downspouts));
        return said.get(
                "plan-in-words.long-carries-to",
                called("roof-line", line.label()),
                line.length().text(),
                from,
                line.into());
    }

    private String outlet(Outlet outlet) {
        String kind = said.get("plan-in-words.outlet-kind." + PlanWords.key(outlet.kind())
                + (OutletDrawing.isIndoors(outlet) ? "-indoors" : ""));
        String pumped = outlet.kind() == OutletKind.SUMP
                ? outlet.discharge()
                        .map(length -> said.get("plan-in-words.discharge", length.text()))
                        .orElse("")
                : "";
        String place = PlaceWords.side(job, outlet.what())
                .map(side -> said.get("plan-in-words.outlet-side", words.side(side)))
                .orElse(said.get("plan-in-words.outlet-side-unknown"));
        return said.get("plan-in-words.outlet", outlet.label(), kind, outlet.what(), pumped) + " " + place;
    }

    private String limit(SiteLimit limit) {
        return said.get(
                "plan-in-words.before-wall",
                words.limit(limit.kind()),
                limit.distance().text(),
                limit.wall());
    }

    /** The label behind its kind, unless the label says the kind itself. */
    private String called(String kind, String label) {
        return isSaid(kind, label) ? label : said.get("plan-in-words.called." + kind, label);
    }

    private boolean isSaid(String kind, String label) {
        String noun = said.get("plan-in-words.noun." + kind);
        return label.toLowerCase(Locale.ROOT).contains(noun);
    }

    /** {@code wall A}, {@code walls A and B}, {@code walls A, B, and C}. */
    private String named(String kind, List<String> labels) {
        if (labels.stream().anyMatch(label -> isSaid(kind, label))) {
            return words.row(labels);
        }
        return labels.size() == 1
                ? said.get("plan-in-words.one." + kind, labels.get(0))
                : said.get("plan-in-words.several." + kind, words.row(labels));
    }
}
