package spadework.paperwork;

import java.util.List;

/** The notices that the law of the house wants in the contract. */
final class ContractNotices {
    private ContractNotices() {}

    static List<NoticeText> of(Dossier dossier) {
        return List.of();
    }

    static boolean isDraft(Dossier dossier) {
        return false;
    }

    static boolean isFormApart(Dossier dossier) {
        return dossier.rules().filter(rules -> rules.state().equals("MD")).isPresent();
    }
}
