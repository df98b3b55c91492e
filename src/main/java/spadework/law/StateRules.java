package spadework.law;

import java.util.List;

/**
 * What is known of a state's rules for home contracts.
 *
 * @param state two-letter code
 * @param deposit limit on the deposit
 * @param depositStatus how far the deposit rule was read: {@code R} read, {@code RX} excerpt, {@code RS} secondary
 *     source, {@code M} from memory
 * @param cancel right to cancel
 * @param leastType smallest type of a prescribed notice, in points
 * @param contents what the contract has to contain
 * @param contentsStatus how far that list was read
 */
public record StateRules(
        String state,
        String title,
        DepositCap deposit,
        String depositStatus,
        CancelRule cancel,
        int leastType,
        List<String> contents,
        String contentsStatus,
        List<String> notes,
        List<String> citations) {

    public StateRules {
        contents = List.copyOf(contents);
        notes = List.copyOf(notes);
        citations = List.copyOf(citations);
    }
}
