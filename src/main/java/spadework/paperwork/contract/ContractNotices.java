// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import java.util.Set;
import spadework.finding.Finding;
import spadework.law.Content;
import spadework.law.ContentsCheck;
import spadework.law.LegalNotice;
import spadework.law.NoticeCase;
import spadework.law.NoticePlace;
import spadework.paperwork.Dossier;

/** The notices that the law of the house wants in the contract, and whether anything is missing. */
public final class ContractNotices {
    private static final Set<String> NOT_TO_BE_SIGNED = Set.of(
            "notice-unworded",
            "contract-language",
            "contract-financed",
            "contract-lien",
            "state-unread",
            "rules-from-memory",
            "license-elsewhere",
            "license-ended",
            "insurance-ended",
            "insurance-below-least",
            "insurance-limit-unsaid",
            "improper-work-below-least",
            "improper-work-limit-unsaid",
            "payment-value-unsaid",
            "disaster-unsaid",
            "letters-unprintable",
            "copy-day-unknown");
    private static final String CONTENT = "content-";

    private ContractNotices() {}

    static List<NoticeText> of(Dossier dossier) {
        boolean secured = dossier.job()
                .agreement()
                .signing()
                .map(one -> one.financing().lienOnHome())
                .orElse(false);
        return ContentsCheck.due(dossier.law(), dossier.contract().contracted().total(), secured).stream()
                .map(ContractNotices::text)
                .toList();
    }

    /** Those that a change order repeats. */
    static List<NoticeText> onChangeOrders(Dossier dossier) {
        return ContentsCheck.due(dossier.law(), dossier.contract().contracted().total(), false).stream()
                .filter(notice -> notice.when() == NoticeCase.ALSO_ON_CHANGE_ORDERS)
                .map(ContractNotices::text)
                .toList();
    }

    /** What is missing before the paper may be signed. */
    public static List<Finding> missing(Dossier dossier) {
        return dossier.findings().contract().stream()
                .filter(finding -> finding.id().startsWith(CONTENT) || NOT_TO_BE_SIGNED.contains(finding.id()))
                .distinct()
                .toList();
    }

    /** Whether the form of cancellation has to be no part of the contract. */
    static boolean isFormApart(Dossier dossier) {
        return dossier.law().state().stream()
                .flatMap(rules -> rules.contents().stream())
                .anyMatch(required -> required.content() == Content.SEPARATE_CANCELLATION_FORM);
    }

    private static NoticeText text(LegalNotice notice) {
        return new NoticeText(
                notice.name(),
                notice.place().words(),
                notice.points(),
                notice.bold(),
                notice.capitals(),
                notice.place() == NoticePlace.PAGE_OF_ITS_OWN && notice.serves().contains(Content.CANCELLATION_FORM),
                notice.wording().orElse(""),
                notice.citation());
    }
}
