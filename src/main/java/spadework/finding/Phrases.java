package spadework.finding;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words for findings, by id. The texts come from {@code templates/words/findings.properties}, where each finding
 * has {@code id.what} and {@code id.action} and may have {@code id.homeowner}; {@code {name}} stands for a value of
 * the finding and {@code {about}} for what it is about.
 */
public record Phrases(Map<String, String> texts) {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z0-9]+)}");

    public Phrases {
        texts = Map.copyOf(texts);
    }

    /** What was found, with its figures. */
    public String what(Finding finding) {
        return fill(finding, finding.id() + ".what");
    }

    /** What to do about it. */
    public String action(Finding finding) {
        return fill(finding, finding.id() + ".action");
    }

    /** What it means to the homeowner, for the findings that concern one. */
    public Optional<String> homeowner(Finding finding) {
        String key = finding.id() + ".homeowner";
        return texts.containsKey(key) ? Optional.of(fill(finding, key)) : Optional.empty();
    }

    /** The sentence that leaves the last word to local code and the people on site. */
    public String deference() {
        return get("deference");
    }

    private String fill(Finding finding, String key) {
        return PLACEHOLDER.matcher(get(key)).replaceAll(found -> {
            String name = found.group(1);
            String value = name.equals("about") ? finding.about() : finding.values().get(name);
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
}
