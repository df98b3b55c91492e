package spadework.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spadework.law.CancelRule;
import spadework.law.DayCount;
import spadework.law.DepositCap;
import spadework.law.DepositKind;
import spadework.law.StateRules;
import spadework.money.Dollars;

/** Reads the bundled rules of the states. */
public final class StateRuleBook {
    private static final String BUNDLED = "/spadework/law/state-rules.json";

    private final Map<String, StateRules> byState = new LinkedHashMap<>();

    private StateRuleBook(JsonNode packs) {
        packs.forEach(pack -> byState.put(pack.get("state").asText(), rules(pack)));
    }

    /** The rules that come with the program. */
    public static StateRuleBook bundled() {
        try (InputStream in = StateRuleBook.class.getResourceAsStream(BUNDLED)) {
            return new StateRuleBook(new ObjectMapper().readTree(in));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The rules of a state; empty where they were not gathered. */
    public Optional<StateRules> find(String state) {
        return Optional.ofNullable(byState.get(state));
    }

    private static StateRules rules(JsonNode pack) {
        JsonNode status = pack.get("factConfidence");
        return new StateRules(
                pack.get("state").asText(),
                pack.get("title").asText(),
                cap(pack.get("depositCap")),
                status.get("depositCap").asText(),
                new CancelRule(
                        pack.get("rescissionDays").asInt(),
                        whole(pack.get("seniorRescissionDays")),
                        whole(pack.get("seniorAge")),
                        count(pack.get("dayCount")),
                        status.get("rescission").asText()),
                pack.get("minTypePt").asInt(),
                texts(pack.get("requiredContents")),
                status.get("requiredContents").asText(),
                texts(pack.get("notes")),
                texts(pack.get("citations")));
    }

    private static List<String> texts(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(text -> texts.add(text.asText()));
        return texts;
    }

    private static Optional<Integer> whole(JsonNode node) {
        return node.isNull() ? Optional.empty() : Optional.of(node.asInt());
    }

    private static Optional<DayCount> count(JsonNode node) {
        return node.isNull()
                ? Optional.empty()
                : Optional.of(DayCount.valueOf(node.asText().toUpperCase(Locale.ROOT).replace(' ', '_')));
    }

    private static DepositCap cap(JsonNode cap) {
        String kind = cap.get("kind").asText().toUpperCase(Locale.ROOT).replace('-', '_');
        return new DepositCap(
                DepositKind.valueOf(kind),
                cap.get("fractionNum").asInt(0),
                cap.get("fractionDen").asInt(1),
                dollars(cap.get("amountUsd")),
                dollars(cap.get("appliesAbovePriceUsd")));
    }

    private static Optional<Dollars> dollars(JsonNode node) {
        return node.isNull() ? Optional.empty() : Optional.of(Dollars.of(new BigDecimal(node.asText())));
    }
}
