// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import spadework.intake.source.ValueKind;
import spadework.wording.Language;

/** Languages of papers, by code; {@code spanish}, as company files had it before, is {@code es}. */
public final class Languages {
    public static final ValueKind<Language> CODE = Choices.among(Language.all().stream(), Language::code);

    private Languages() {}
}
