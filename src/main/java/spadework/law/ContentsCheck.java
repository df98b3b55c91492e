// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.money.Dollars;

/**
 * Holds a contract against what the federal rule and the state's law want in it. What is not found is a must, and so
 * is a notice whose wording was not gathered. Nothing here says that a contract is lawful.
 */
public final class ContentsCheck {
    private final String state;
    private final List<Finding> found = new ArrayList<>();

    private ContentsCheck(String state) {
        this.state = state;
    }

    /**
     * What is missing.
     *
     * @param law the federal floor, and the state's rules where they were gathered
     * @param holds what the contract holds
     * @param price the contract price, on which it depends whether a state's law reaches it
     * @param securedOnTheHome whether the contract gives a claim on the home
     */
    public static List<Finding> of(
            String state, HouseLaw law, Set<Content> holds, Dollars price, boolean securedOnTheHome) {
        ContentsCheck check = new ContentsCheck(state);
        check.pack(law.federal(), holds, price, securedOnTheHome);
        Optional<StateRules> rules = law.state();
        rules.filter(pack -> pack.reaches(price)).ifPresent(pack -> check.pack(pack, holds, price, securedOnTheHome));
        rules.ifPresent(check::unverified);
        rules.ifPresent(check::fromMemory);
        return List.copyOf(check.found);
    }

    /** The notices that a contract needs, of the federal floor and the state, in the order of the rules. */
    public static List<LegalNotice> due(HouseLaw law, Dollars price, boolean securedOnTheHome) {
        return Stream.concat(Stream.of(law.federal()), law.state().stream())
                .filter(pack -> pack.reaches(price))
                .flatMap(pack -> pack.notices().stream())
                .filter(notice -> notice.isDue(price, securedOnTheHome))
                .toList();
    }

    private void pack(StateRules pack, Set<Content> holds, Dollars price, boolean secured) {
        List<LegalNotice> due = pack.notices().stream()
                .filter(notice -> notice.isDue(price, secured))
                .toList();
        Set<Content> described = due.stream()
                .filter(notice -> notice.wording().isEmpty())
                .flatMap(notice -> notice.serves().stream())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Content.class)));
        for (RequiredContent required : pack.contents()) {
            boolean dueAsNotice = isNotice(pack, required.content());
            boolean reached = !dueAsNotice
                    || due.stream().anyMatch(notice -> notice.serves().contains(required.content()));
            if (reached && !holds.contains(required.content()) && !described.contains(required.content())) {
                missing(pack, required);
            }
        }
        due.stream().filter(notice -> notice.wording().isEmpty()).forEach(notice -> unworded(pack, notice));
    }

    /** Whether a content is wanted as a notice, so that its own threshold decides. */
    private static boolean isNotice(StateRules pack, Content content) {
        return pack.notices().stream()
                .anyMatch(notice ->
                        notice.serves().contains(content) && notice.above().isPresent());
    }

    private void missing(StateRules pack, RequiredContent required) {
        found.add(new Finding(
                "content-" + required.content().words().replace(' ', '-'),
                Severity.MUST,
                state,
                Map.of("asks", required.asks(), "law", pack.state()),
                String.join("; ", pack.citations()) + marked(required.status())));
    }

    private void unworded(StateRules pack, LegalNotice notice) {
        found.add(new Finding(
                "notice-unworded",
                Severity.MUST,
                state,
                Map.of(
                        "notice", notice.name(),
                        "place", notice.place().words(),
                        "type", type(notice),
                        "law", pack.state()),
                notice.citation() + marked(notice.status())));
    }

    private static String type(LegalNotice notice) {
        return "at least " + notice.points() + " point" + (notice.bold() ? ", bold" : "")
                + (notice.capitals() ? ", capitals" : "");
    }

    /** One finding that lists what of a state's rules was not read in the law itself. */
    private void unverified(StateRules pack) {
        List<String> facts = pack.facts().entrySet().stream()
                .filter(fact -> !fact.getValue().equals("R"))
                .map(fact -> fact.getKey() + " (" + ReadStatus.words(fact.getValue()) + ")")
                .toList();
        if (!facts.isEmpty()) {
            found.add(new Finding(
                    "rules-unverified",
                    Severity.ADVISE,
                    state,
                    Map.of("facts", String.join(", ", facts), "asOf", pack.asOf()),
                    String.join("; ", pack.citations())));
        }
    }

    /** What nobody has read is no ground to sign on. */
    private void fromMemory(StateRules pack) {
        List<String> known = pack.fromMemory();
        if (!known.isEmpty()) {
            found.add(new Finding(
                    "rules-from-memory",
                    Severity.MUST,
                    state,
                    Map.of("what", String.join(", ", known)),
                    String.join("; ", pack.citations())));
        }
    }

    private static String marked(String status) {
        return status.equals("R") ? "" : " (" + ReadStatus.words(status) + "; not verified)";
    }
}
