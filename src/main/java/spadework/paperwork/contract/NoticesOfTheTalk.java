// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.law.Content;
import spadework.law.Counsel;
import spadework.law.HouseLaw;
import spadework.law.LegalNotice;

/**
 * Whether the buyer's right to cancel is told in the language of the sales talk (16 CFR 429.1(a), (b)). Words in
 * another language than English are counsel's alone: they stand as notices of the rules beside the job, whose names end
 * with the language, as {@code notice of cancellation in Spanish}.
 */
final class NoticesOfTheTalk {
    private static final String CITATION = "16 CFR 429.1(a), (b)";
    private static final Set<Content> WANTED = EnumSet.of(Content.CANCELLATION_STATEMENT, Content.CANCELLATION_FORM);

    private NoticesOfTheTalk() {}

    /** @param due the notices that the contract prints */
    static List<Finding> of(String state, String language, HouseLaw law, List<LegalNotice> due) {
        if (language.equalsIgnoreCase("English")) {
            return List.of();
        }
        Set<Content> told = EnumSet.noneOf(Content.class);
        List<Counsel> by = new ArrayList<>();
        Stream.concat(Stream.of(law.federal()), law.state().stream())
                .forEach(pack -> pack.source()
                        .counsel()
                        .ifPresent(counsel -> pack.notices().stream()
                                .filter(notice -> due.contains(notice)
                                        && notice.wording().isPresent()
                                        && notice.name().endsWith(" in " + language))
                                .forEach(notice -> {
                                    told.addAll(notice.serves());
                                    by.add(counsel);
                                })));
        return told.containsAll(WANTED)
                ? List.of(new Finding(
                        "contract-language-counsel",
                        Severity.ADVISE,
                        state,
                        Map.of(
                                "language", language,
                                "by", by.get(0).by(),
                                "on", by.get(0).on().toString()),
                        CITATION))
                : List.of(
                        new Finding("contract-language", Severity.MUST, state, Map.of("language", language), CITATION));
    }
}
