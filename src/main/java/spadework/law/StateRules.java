// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.law.release.ReleaseForm;
import spadework.law.release.ReleaseKind;
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
 * @param releases forms in which a claim on the house is released, where the state prescribes them
 * @param leastType points under which no type of the contract may be, what is attached to it included; empty where
 *     no such rule is known
 * @param insurance the least liability cover that it asks for; nothing where none was gathered
 * @param source where all this comes from, and how far it was read
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
        List<ReleaseForm> releases,
        List<LeastCover> insurance,
        Optional<Integer> leastType,
        RuleSource source) {
    /** The rules that hold in every state. */
    public static final String FEDERAL = "US-FTC";

    private static final Map<String, String> FACT_WORDS = Map.of(
            "threshold", "from which price its law holds",
            "deposit", "the limit on the deposit",
            "cancel", "the right to cancel",
            "type", "the size of type",
            "contents", "what has to stand in the contract");

    /** Name of the deposit rule among the facts. */
    public static final String DEPOSIT = "deposit";

    public StateRules {
        contents = List.copyOf(contents);
        notices = List.copyOf(notices);
        releases = List.copyOf(releases);
        insurance = List.copyOf(insurance);
    }

    /** The prescribed form of a release; empty where the state is not known to prescribe one. */
    public Optional<ReleaseForm> release(ReleaseKind kind) {
        return releases.stream().filter(form -> form.release() == kind).findFirst();
    }

    /** How far each kind of fact was read. */
    public Map<String, String> facts() {
        return source.facts();
    }

    /** Where the right to cancel stands: its own citation, else all that were gathered for the state. */
    public String cancelCitation() {
        return cancel.citation().orElseGet(() -> String.join("; ", citations()));
    }

    public List<String> citations() {
        return source.citations();
    }

    /** The day on which this was put together. */
    public String asOf() {
        return source.asOf();
    }

    /** What of it is known from memory alone, in words; nothing once the contractor's counsel has read it. */
    public List<String> fromMemory() {
        if (source.counsel().isPresent()) {
            return List.of();
        }
        Set<String> known = new LinkedHashSet<>();
        facts().forEach((fact, status) -> remember(known, status, FACT_WORDS.getOrDefault(fact, fact)));
        contents.forEach(
                content -> remember(known, content.status(), content.content().words()));
        notices.forEach(notice -> remember(known, notice.status(), notice.name()));
        cancel.holidays().forEach(day -> remember(known, day.status(), day.name()));
        releases.forEach(
                form -> remember(known, form.status(), "the " + form.release().words() + " release"));
        insurance.forEach(cover -> remember(
                known,
                cover.status(),
                "the least insurance for " + cover.cover().words()));
        return List.copyOf(known);
    }

    private static void remember(Set<String> known, String status, String what) {
        if (status.equals("M")) {
            known.add(what);
        }
    }

    /** Whether its contract law reaches a contract of that price. */
    public boolean reaches(Dollars price) {
        return threshold
                .map(from -> from.isLessThan(price) || (atThreshold && from.equals(price)))
                .orElse(true);
    }

    /** How far the deposit rule was read. */
    public String depositStatus() {
        return facts().getOrDefault(DEPOSIT, "M");
    }
}
