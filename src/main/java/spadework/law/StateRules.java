package spadework.law;

import java.util.List;

/**
 * What is known of a state's rules for home contracts.
 *
 * @param state two-letter code
 * @param deposit limit on the deposit
 * @param depositStatus how far the deposit rule was read: {@code R} read, {@code RX} excerpt, {@code RS} secondary
 *     source, {@code M} from memory
 */
public record StateRules(String state, String title, DepositCap deposit, String depositStatus, List<String> citations) {

    public StateRules {
        citations = List.copyOf(citations);
    }
}
