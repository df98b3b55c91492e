// SPDX-License-Identifier: Apache-2.0
package spadework.intake.law;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Choices;
import spadework.law.release.ReleaseForm;
import spadework.law.release.ReleaseKind;
import spadework.law.release.ReleaseWording;

/** Reads the releases that a state prescribes. One of the file takes the place of the known one of its kind. */
final class ReleaseReader {
    private ReleaseReader() {}

    static List<ReleaseForm> read(ObjectFields fields, List<ReleaseForm> known) {
        Map<ReleaseKind, ReleaseForm> all = new EnumMap<>(ReleaseKind.class);
        known.forEach(form -> all.put(form.release(), form));
        fields.list("releases", ValueKind.object(inside -> form(inside, all)))
                .forEach(form -> all.put(form.release(), form));
        return List.copyOf(all.values());
    }

    private static ReleaseForm form(ObjectFields fields, Map<ReleaseKind, ReleaseForm> known) {
        ReleaseKind kind = fields.get("release", Choices.of(ReleaseKind.class));
        Optional<ReleaseForm> base = Optional.ofNullable(known.get(kind));
        Optional<ReleaseWording> wording = fields.find("wording", ValueKind.object(ReleaseReader::wording))
                .or(() -> base.flatMap(ReleaseForm::wording));
        return new ReleaseForm(
                kind, wording, fields.get("status", StateRuleReader.STATUS), fields.get("citation", Texts.TEXT));
    }

    private static ReleaseWording wording(ObjectFields fields) {
        return new ReleaseWording(
                fields.get("title", Texts.TEXT),
                fields.get("notice", Texts.TEXT, ""),
                fields.get("text", Texts.TEXT),
                fields.get("effect", Texts.TEXT, ""),
                fields.get("exceptions", Texts.TEXT, ""));
    }
}
