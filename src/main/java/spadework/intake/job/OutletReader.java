// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import spadework.intake.source.ObjectFields;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Choices;
import spadework.intake.value.Measures;
import spadework.job.Outlet;
import spadework.job.OutletCandidate;
import spadework.job.OutletKind;
import spadework.job.PitPlace;
import spadework.job.SumpPit;

/** Reads where the water leaves, and where else it could. */
public final class OutletReader {
    private OutletReader() {}

    static Outlet outlet(ObjectFields fields) {
        return new Outlet(
                fields.get("label", Texts.LABEL),
                fields.get("kind", Choices.of(OutletKind.class)),
                fields.get("what", Texts.LABEL),
                fields.find("level", Measures.LEVEL),
                fields.find("fromHouse", Measures.lengthFromZeroTo(5000)),
                fields.find("fromLotLine", Measures.lengthFromZeroTo(5000)),
                fields.find("permission", Texts.TEXT),
                fields.find("discharge", Measures.lengthFromZeroTo(1000)),
                fields.find("waterLevel", Measures.LEVEL),
                fields.find("pit", ValueKind.object(OutletReader::pit)),
                fields.find("dischargeTrench", ValueKind.object(WaterReader::trench)));
    }

    private static SumpPit pit(ObjectFields fields) {
        return new SumpPit(
                fields.find("diameter", Measures.lengthUpTo(20)),
                fields.find("depth", Measures.lengthUpTo(20)),
                fields.find("lift", Measures.lengthUpTo(100)),
                fields.find("pumpFlow", Measures.FLOW),
                fields.find("pumpHead", Measures.lengthUpTo(200)),
                fields.get("place", Choices.of(PitPlace.class), PitPlace.UNKNOWN),
                fields.find("fromFooting", Measures.lengthFromZeroTo(1000)),
                fields.find("observedInflow", Measures.OBSERVED_FLOW).flatMap(seen -> seen));
    }

    static OutletCandidate candidate(ObjectFields fields) {
        return new OutletCandidate(
                fields.get("label", Texts.LABEL),
                fields.get("what", Texts.LABEL),
                fields.get("distance", Measures.lengthUpTo(5000)),
                fields.get("level", Measures.LEVEL),
                fields.find("permission", Texts.TEXT),
                fields.get("note", Texts.TEXT, ""));
    }
}
