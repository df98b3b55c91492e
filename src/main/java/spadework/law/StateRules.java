package spadework.law;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.money.Dollars;

/**
 * What is known of a state's rules for home contracts.
 *
 * @param state two-letter code, or {@code US-FTC} for the federal floor
 * @param threshold the price from which its contract law holds; empty where none was found
 * @param atThreshold whether it holds at that very price, or only above
 * @param deposit limit on the deposit
 * @param cancel right to cancel
 * @param contents what the contract has to contain
 * @param notices what has to be said in it, where and how large
 * @param facts how far each kind of fact was read, by its name: {@code R} read, {@code RX} excerpt, {@code RS}
 *     secondary source, {@code M} from memory
 * @param asOf the day on which this was put together
 */
public record StateRules(
        String state,
        String title,
        Optional<Dollars> threshold,
        boolean atThreshold,
        DepositCap deposit,
        CancelRule cancel,
        List<RequiredContent> contents,
        List<LegalNotice> notices,
        Map<String, String> facts,
        List<String> notes,
        List<String> citations,
        String asOf) {
    /** The rules that hold in every state. */
    public static final String FEDERAL = "US-FTC";

    /** Name of the deposit rule among the facts. */
    public static final String DEPOSIT = "deposit";

    public StateRules {
        contents = List.copyOf(contents);
        notices = List.copyOf(notices);
        notes = List.copyOf(notes);
        citations = List.copyOf(citations);
    }

    /** Whether its contract law reaches a contract of that price. */
    public boolean reaches(Dollars price) {
        return threshold
                .map(from -> from.isLessThan(price) || (atThreshold && from.equals(price)))
                .orElse(true);
    }

    /** How far the deposit rule was read. */
    public String depositStatus() {
        return facts.getOrDefault(DEPOSIT, "M");
    }
}
