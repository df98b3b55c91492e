// SPDX-License-Identifier: Apache-2.0
package spadework.finding;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words for findings, by id. The texts come from {@code templates/words/findings.properties}, where each finding
 * has {@code id.what} and {@code id.action} and may have {@code id.homeowner}; {@code {name}} stands for a value of
 * the finding and {@code {about}} for what it is about. What may be found at several walls has {@code id.what.walls}
 * and {@code id.homeowner.walls} beside them. An action that names keys or commands has {@code id.action.sheet} for
 * paper.
 */
public record Phrases(Map<String, String> texts) {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z0-9]+)}");

    public Phrases {
        texts = Map.copyOf(texts);
    }

    /** What was found, with its figures. */
    public String what(Finding finding) {
        return fill(finding, finding.id() + ".what", finding.about());
    }

    /** What to do about it. */
    public String action(Finding finding) {
        return fill(finding, finding.id() + ".action", finding.about());
    }

    /** The same on paper, which names neither commands nor keys of files. */
    public String actionOnPaper(Finding finding) {
        String key = finding.id() + ".action.sheet";
        return texts.containsKey(key) ? fill(finding, key, finding.about()) : action(finding);
    }

    /**
     * Which line item carries what the finding asks for, or what the book would ask; empty where it costs nothing, and
     * for the contractor only.
     */
    public Optional<String> paid(Finding finding) {
        if (finding.values().containsKey("paidBy")) {
            boolean several = finding.values().get("paidBy").contains("; ");
            return Optional.of(fill(finding, several ? "paid.carried.several" : "paid.carried", finding.about()));
        }
        if (finding.values().containsKey("unpaid")) {
            String key = finding.values().containsKey("asks") ? "paid.open" : "paid.nowhere";
            return Optional.of(fill(finding, key, finding.about()));
        }
        return Optional.empty();
    }

    /** What it means to the homeowner, for the findings that concern one. */
    public Optional<String> homeowner(Finding finding) {
        String key = finding.id() + ".homeowner";
        return texts.containsKey(key) ? Optional.of(fill(finding, key, finding.about())) : Optional.empty();
    }

    /**
     * The same said of several walls at once, where there are words for it.
     *
     * @param part {@code what} or {@code homeowner}
     * @param walls their labels as they stand in the sentence, as {@code A and B}
     */
    public Optional<String> ofWalls(Finding finding, String part, String walls) {
        String key = finding.id() + "." + part + ".walls";
        return texts.containsKey(key) ? Optional.of(fill(finding, key, walls)) : Optional.empty();
    }

    /** The sentence that leaves the last word to local code and the people on site. */
    public String deference() {
        return get("deference");
    }

    /** The sentence that leaves the last word in matters of law. */
    public String lawDeference() {
        return get("deference.law");
    }

    private String fill(Finding finding, String key, String about) {
        return PLACEHOLDER.matcher(get(key)).replaceAll(found -> {
            String name = found.group(1);
            String value = name.equals("about") ? about : finding.values().get(name);
            if (value == null) {
                throw new IllegalStateException(key + " asks for {" + name + "}, which the finding does not carry");
            }
            return Matcher.quoteReplacement(value);
        });
    }

    private String get(String key) {
        String text = texts.get(key);
        if (text == null) {
            throw new IllegalStateException("the words of findings lack " + key);
        }
        return text;
    }

    /** A finding in one line: its id, what was found, what to do, and where that stands. */
    public String described(Finding finding) {
        return finding.id() + ": " + what(finding) + " " + action(finding) + " [" + finding.citation() + "]";
    }
}
