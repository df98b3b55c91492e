package spadework.law;

import java.util.List;
import java.util.Optional;

/**
 * What a written warranty says, so that it can be held against the law. What it does not say is empty.
 *
 * @param title its title, as "Limited warranty"
 * @param who whom it covers
 * @param covered what it covers
 * @param notCovered what it does not cover
 * @param remedy what the warrantor does, and who pays
 * @param start when it starts
 * @param term how long it lasts, a term for each part
 * @param claimSteps how a claim is made, step by step
 * @param warrantor the warrantor's name
 * @param contact mailing address or toll-free telephone
 * @param dispute the informal way of settling disputes that the warrantor chose; empty where none was chosen
 * @param disputeChosen whether one was chosen
 * @param limitsImplied whether it limits how long implied warranties last
 * @param limitsDamages whether it leaves out incidental or consequential damages
 * @param text the whole text, in which the prescribed sentences are looked for
 */
public record WrittenWarranty(
        String title,
        List<String> who,
        List<String> covered,
        List<String> notCovered,
        String remedy,
        String start,
        List<String> term,
        List<String> claimSteps,
        String warrantor,
        String contact,
        Optional<String> dispute,
        boolean disputeChosen,
        boolean limitsImplied,
        boolean limitsDamages,
        String text) {

    public WrittenWarranty {
        who = List.copyOf(who);
        covered = List.copyOf(covered);
        notCovered = List.copyOf(notCovered);
        term = List.copyOf(term);
        claimSteps = List.copyOf(claimSteps);
    }
}
