package spadework.intake;

import java.util.List;
import spadework.job.Downspout;
import spadework.job.FootingDrain;
import spadework.job.Outlet;
import spadework.job.SolidRun;
import spadework.job.TeeAt;
import spadework.job.TrenchSize;
import spadework.job.Water;

/** Reads the pipes. */
final class WaterReader {
    static final Water NONE = new Water(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    static final Kind<Downspout> DOWNSPOUT = Kind.object(WaterReader::downspout);
    static final Kind<Outlet> OUTLET = Kind.object(OutletReader::outlet);

    private final Codes codes;

    WaterReader(Codes codes) {
        this.codes = codes;
    }

    Kind<Water> kind() {
        return Kind.object(fields -> new Water(
                fields.list("drains", drain()),
                fields.list("mains", run()),
                fields.list("roofLines", run()),
                fields.list("downspouts", DOWNSPOUT),
                fields.list("outlets", OUTLET),
                fields.list("candidates", Kind.object(OutletReader::candidate))));
    }

    Kind<FootingDrain> drain() {
        return Kind.object(this::drain);
    }

    Kind<SolidRun> run() {
        return Kind.object(this::run);
    }

    private FootingDrain drain(Fields fields) {
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

    private SolidRun run(Fields fields) {
        return new SolidRun(
                fields.get("label", Texts.LABEL),
                fields.get("length", Measures.lengthUpTo(5000)),
                fields.find("item", codes.kind()),
                fields.get("trench", Kind.object(WaterReader::trench)),
                fields.get("bends", Counts.between(0, 100), 0),
                fields.get("into", Texts.LABEL),
                fields.find("startInvert", Measures.LEVEL),
                fields.find("endInvert", Measures.LEVEL),
                fields.find("startGrade", Measures.LEVEL),
                fields.find("endGrade", Measures.LEVEL));
    }

    private static TrenchSize trench(Fields fields) {
        return new TrenchSize(
                fields.get("width", Measures.lengthBetween(4, 10)), fields.get("depth", Measures.lengthUpTo(20)));
    }

    private static Downspout downspout(Fields fields) {
        return new Downspout(
                fields.get("label", Texts.LABEL),
                fields.get("roof", Measures.areaUpTo(100_000)),
                fields.get("into", Texts.LABEL));
    }
}
