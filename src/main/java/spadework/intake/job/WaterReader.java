// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import java.util.List;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Choices;
import spadework.intake.value.Codes;
import spadework.intake.value.Counts;
import spadework.intake.value.Measures;
import spadework.job.BesideWall;
import spadework.job.Downspout;
import spadework.job.FootingDrain;
import spadework.job.HousePlace;
import spadework.job.Outlet;
import spadework.job.Protection;
import spadework.job.Side;
import spadework.job.SolidRun;
import spadework.job.TeeAt;
import spadework.job.TrenchSize;
import spadework.job.Water;
import spadework.measure.Length;

/** Reads the pipes. */
public final class WaterReader {
    static final Water NONE = new Water(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    static final ValueKind<Downspout> DOWNSPOUT = ValueKind.object(WaterReader::downspout);
    static final ValueKind<Outlet> OUTLET = ValueKind.object(OutletReader::outlet);

    private final Codes codes;

    WaterReader(Codes codes) {
        this.codes = codes;
    }

    ValueKind<Water> kind() {
        return ValueKind.object(fields -> new Water(
                fields.list("drains", drain()),
                fields.list("mains", run()),
                fields.list("roofLines", run()),
                fields.list("downspouts", DOWNSPOUT),
                fields.list("outlets", OUTLET),
                fields.list("candidates", ValueKind.object(OutletReader::candidate))));
    }

    ValueKind<FootingDrain> drain() {
        return ValueKind.object(this::drain);
    }

    ValueKind<SolidRun> run() {
        return ValueKind.object(this::run);
    }

    private FootingDrain drain(ObjectFields fields) {
        return new FootingDrain(
                fields.get("label", Texts.LABEL),
                fields.filled("along", Texts.LABEL),
                fields.find("item", codes.kind()),
                fields.get("teeAt", Choices.of(TeeAt.class)),
                fields.get("into", Texts.LABEL),
                fields.find("startInvert", Measures.LEVEL),
                fields.find("endInvert", Measures.LEVEL),
                fields.find("teeInvert", Measures.LEVEL),
                fields.find("startGrade", Measures.LEVEL),
                fields.find("endGrade", Measures.LEVEL));
    }

    private SolidRun run(ObjectFields fields) {
        return new SolidRun(
                fields.get("label", Texts.LABEL),
                fields.get("length", Measures.lengthUpTo(5000)),
                fields.find("item", codes.kind()),
                fields.get("trench", ValueKind.object(WaterReader::trench)),
                fields.get("bends", Counts.between(0, 100), 0),
                fields.get("into", Texts.LABEL),
                fields.find("startInvert", Measures.LEVEL),
                fields.find("endInvert", Measures.LEVEL),
                fields.find("startGrade", Measures.LEVEL),
                fields.find("endGrade", Measures.LEVEL),
                fields.find("besideWall", ValueKind.object(WaterReader::besideWall)));
    }

    private static BesideWall besideWall(ObjectFields fields) {
        return new BesideWall(
                fields.get("wall", Texts.LABEL), fields.get("length", Measures.lengthFromZeroTo(5000), Length.ZERO));
    }

    static TrenchSize trench(ObjectFields fields) {
        return new TrenchSize(
                fields.get("width", Measures.lengthBetween(4, 10)),
                fields.get("depth", Measures.lengthUpTo(20)),
                fields.find("protection", Choices.of(Protection.class)));
    }

    private static Downspout downspout(ObjectFields fields) {
        return new Downspout(
                fields.get("label", Texts.LABEL),
                fields.get("roof", Measures.areaUpTo(100_000)),
                fields.get("into", Texts.LABEL),
                fields.find("place", ValueKind.object(WaterReader::place)));
    }

    private static HousePlace place(ObjectFields fields) {
        return new HousePlace(
                fields.get("side", Choices.of(Side.class)), fields.get("from", Measures.lengthFromZeroTo(1000)));
    }
}
