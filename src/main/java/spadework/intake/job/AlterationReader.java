// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import spadework.intake.source.ObjectFields;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Codes;
import spadework.job.Alteration;
import spadework.job.NewFinish;
import spadework.job.TakenAway;

/** Reads what an option or a change order adds and takes away. */
public final class AlterationReader {
    private final ValueKind<Alteration> adds;

    AlterationReader(Codes codes) {
        WallReader walls = new WallReader(codes);
        WaterReader water = new WaterReader(codes);
        ValueKind<NewFinish> finish = ValueKind.object(
                fields -> new NewFinish(fields.get("wall", Texts.LABEL), fields.get("finish", walls.finish())));
        this.adds = ValueKind.object(fields -> new Alteration(
                fields.list("walls", walls.kind()),
                fields.list("finishes", finish),
                fields.list("corners", JobReader.CORNER),
                fields.list("drains", water.drain()),
                fields.list("mains", water.run()),
                fields.list("roofLines", water.run()),
                fields.list("downspouts", WaterReader.DOWNSPOUT),
                fields.list("outlets", WaterReader.OUTLET),
                fields.list("items", new ExtraItemReader(codes).item()),
                fields.find("restoration", JobReader.RESTORATION),
                TakenAway.NOTHING));
    }

    /** Reads "adds" and "takesAway" of the object. */
    Alteration read(ObjectFields fields) {
        return fields.get("adds", adds, Alteration.NONE)
                .taking(fields.get("takesAway", ValueKind.object(AlterationReader::takenAway), TakenAway.NOTHING));
    }

    private static TakenAway takenAway(ObjectFields fields) {
        return new TakenAway(
                fields.list("walls", Texts.LABEL),
                fields.list("pipes", Texts.LABEL),
                fields.list("downspouts", Texts.LABEL),
                fields.list("outlets", Texts.LABEL),
                fields.list("items", Texts.LABEL),
                fields.find("restoration", JobReader.RESTORATION));
    }
}
