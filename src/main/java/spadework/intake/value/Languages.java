// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import spadework.intake.source.ValueKind;
import spadework.wording.Language;

/** Languages of papers: a job has them by code, a company by name. */
public final class Languages {
    public static final ValueKind<Language> CODE = Choices.among(Language.all().stream(), Language::code);
    public static final ValueKind<Language> NAME = Choices.among(Language.all().stream(), Language::name);

    private Languages() {}
}
