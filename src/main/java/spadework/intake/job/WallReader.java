// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceFile;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Choices;
import spadework.intake.value.Codes;
import spadework.intake.value.Counts;
import spadework.intake.value.Measures;
import spadework.intake.value.Shares;
import spadework.job.Access;
import spadework.job.Condition;
import spadework.job.Digging;
import spadework.job.EndKind;
import spadework.job.Finish;
import spadework.job.FinishSystem;
import spadework.job.Footing;
import spadework.job.Opening;
import spadework.job.Protection;
import spadework.job.Side;
import spadework.job.Surface;
import spadework.job.TrenchEnds;
import spadework.job.Unseen;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.WallKind;
import spadework.job.WallPlace;
import spadework.job.WallSurface;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.trench.TrenchLimits;

/** Reads a wall and its trench, with the usual footing and the usual way to dig where nothing is said. */
public final class WallReader {
    private static final ValueKind<Length> DEPTH = Measures.lengthUpTo(20);
    private static final ValueKind<Length> FOOTING_SIZE = Measures.lengthFromZeroTo(5);
    private static final Footing USUAL_FOOTING = new Footing(Length.ofInches(8), Length.ofInches(6), false);
    private static final Digging USUAL_DIGGING =
            new Digging(Access.MACHINE, Percent.ZERO, Length.ofInches(24), Protection.SLOPED);

    private final Codes codes;

    WallReader(Codes codes) {
        this.codes = codes;
    }

    ValueKind<Wall> kind() {
        return ValueKind.object(this::wall);
    }

    private Wall wall(ObjectFields fields) {
        WallDepth depth = fields.get("depth", new ValueKind<>("\"5 ft\"", WallReader::depths));
        Wall wall = new Wall(
                fields.get("label", Texts.LABEL),
                fields.get("where", Texts.LABEL),
                new WallPlace(
                        fields.get("faces", Choices.of(Side.class)),
                        fields.get("from", Measures.lengthFromZeroTo(1000)),
                        fields.get("length", Measures.lengthUpTo(1000))),
                depth,
                fields.get("footing", ValueKind.object(WallReader::footing), USUAL_FOOTING),
                new WallSurface(
                        fields.get("kind", Choices.of(WallKind.class)),
                        fields.get("condition", ValueKind.object(WallReader::condition)),
                        fields.list("strip", codes.kind()),
                        fields.get("finish", finish())),
                fields.list("openings", ValueKind.object(WallReader::opening)),
                fields.get("windowWells", Counts.between(0, 50), 0),
                fields.get("digging", ValueKind.object(WallReader::digging), USUAL_DIGGING));
        checkDepth(fields.node(), wall);
        checkOpenings(fields.node(), wall);
        return wall;
    }

    private static WallDepth depths(SourceNode node) {
        if (!node.isObject()) {
            Length depth = DEPTH.read(node);
            return new WallDepth(depth, depth);
        }
        return ValueKind.object(ends -> new WallDepth(ends.get("start", DEPTH), ends.get("end", DEPTH)))
                .read(node);
    }

    private static void checkDepth(SourceNode node, Wall wall) {
        boolean sound = isSound(node, "depth") && isSound(node, "footing");
        if (sound && TrenchLimits.isEngineered(wall.deepestTrench())) {
            node.at("depth")
                    .fault(
                            "a trench " + wall.deepestTrench().text() + " deep with the footing",
                            "at most " + TrenchLimits.ENGINEER_OVER.text() + " to the bottom of the footing",
                            "measure again; a deeper trench is an engineer's");
        }
    }

    private static void checkOpenings(SourceNode node, Wall wall) {
        double openings =
                wall.openings().stream().mapToDouble(Opening::squareFeet).sum();
        double face = wall.length().feet()
                * (wall.depthStart().feet() + wall.depthEnd().feet())
                / 2;
        boolean sound = isSound(node, "openings") && isSound(node, "depth") && isSound(node, "length");
        if (sound && openings > face) {
            node.at("openings")
                    .fault(
                            Math.round(openings) + " sf of openings",
                            "no more than the wall's " + Math.round(face) + " sf below grade",
                            "give only the height that lies below grade");
        }
    }

    private static boolean isSound(SourceNode node, String key) {
        return node.sheet().isSound(SourceFile.child(node.pointer(), key));
    }

    private static Footing footing(ObjectFields fields) {
        return new Footing(
                fields.get("thickness", FOOTING_SIZE, USUAL_FOOTING.thickness()),
                fields.get("projection", FOOTING_SIZE, USUAL_FOOTING.projection()),
                fields.node().at("thickness").json() != null
                        && fields.node().at("projection").json() != null);
    }

    /** What was not looked at has to be said: an unknown condition is not a safe one. */
    private static Condition condition(ObjectFields fields) {
        Set<Unseen> unseen = EnumSet.noneOf(Unseen.class);
        return new Condition(
                fields.get("surface", Choices.of(Surface.class)),
                seen(fields, "cracks", orUnknown(1000), Unseen.CRACKS, unseen).orElse(Length.ZERO),
                seen(fields, "horizontalCrack", Texts.YES_NO_OR_UNKNOWN, Unseen.HORIZONTAL_CRACK, unseen)
                        .orElse(false),
                seen(fields, "displaced", Texts.YES_NO_OR_UNKNOWN, Unseen.DISPLACED, unseen)
                        .orElse(false),
                fields.find("bow", orUnknown(5)).flatMap(bow -> bow),
                seen(fields, "footingUndermined", Texts.YES_NO_OR_UNKNOWN, Unseen.FOOTING, unseen)
                        .orElse(false),
                fields.find("tiedToFloor", Texts.YES_NO_OR_UNKNOWN).flatMap(tied -> tied),
                unseen);
    }

    private static <T> Optional<T> seen(
            ObjectFields fields, String key, ValueKind<Optional<T>> kind, Unseen what, Set<Unseen> unseen) {
        Optional<T> value = fields.get(key, kind);
        if (value.isEmpty()) {
            unseen.add(what);
        }
        return value;
    }

    /** A length, or "unknown", which is empty. */
    private static ValueKind<Optional<Length>> orUnknown(int feet) {
        ValueKind<Length> length = Measures.lengthFromZeroTo(feet);
        return new ValueKind<>("\"0 ft\"", node -> {
            boolean unknown = node.json() != null
                    && node.json().isTextual()
                    && node.json().textValue().strip().equals(Texts.UNKNOWN);
            return unknown ? Optional.empty() : Optional.of(length.read(node));
        });
    }

    private static Opening opening(ObjectFields fields) {
        return new Opening(
                fields.get("what", Texts.LABEL),
                fields.get("count", Counts.between(1, 1000), 1),
                fields.get("width", Measures.lengthUpTo(100)),
                fields.get("height", Measures.lengthUpTo(20)));
    }

    ValueKind<Finish> finish() {
        return ValueKind.object(this::finish);
    }

    private Finish finish(ObjectFields fields) {
        return new Finish(
                fields.get("system", Choices.of(FinishSystem.class)),
                fields.find("item", codes.kind()),
                fields.find("dryFilm", Measures.FILM));
    }

    private static Digging digging(ObjectFields fields) {
        return new Digging(
                fields.get("access", Choices.of(Access.class), USUAL_DIGGING.access()),
                fields.get("handShare", Shares.fromZeroTo(100), USUAL_DIGGING.handShare()),
                fields.get("bottomWidth", Measures.lengthBetween(12, 20), USUAL_DIGGING.bottomWidth()),
                fields.get("protection", Choices.of(Protection.class), USUAL_DIGGING.protection()),
                fields.get("ends", ValueKind.object(WallReader::ends), TrenchEnds.OPEN));
    }

    private static TrenchEnds ends(ObjectFields fields) {
        return new TrenchEnds(
                fields.get("start", Choices.of(EndKind.class), EndKind.OPEN),
                fields.get("end", Choices.of(EndKind.class), EndKind.OPEN),
                fields.find("rampRun", Measures.lengthUpTo(20)));
    }
}
