// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.finding.Finding;
import spadework.paperwork.PaperWords;

/** What a finding carries beside figures, in the words of a paper: {@code said.} and {@code body.} of its terms. */
public final class FindingValues {
    /** Words before a figure, as {@code built 1960}. */
    private static final Pattern BEFORE_FIGURE = Pattern.compile("(\\p{L}[\\p{L} ]*?) (\\d.*)");

    /** From one figure to another, as {@code 1 ft to 4 ft}. */
    private static final Pattern BETWEEN = Pattern.compile("(\\d.*) to (\\d.*)");

    private FindingValues() {}

    /** The finding in the language of the paper; a word that this has not stays as it is. */
    public static Finding in(PaperWords terms, Finding finding) {
        Map<String, String> said = new LinkedHashMap<>();
        finding.values().forEach((name, value) -> said.put(name, value(terms, value)));
        bodies(terms, finding.bodies()).ifPresent(named -> said.put("at", named));
        return finding.withValues(said);
    }

    private static String value(PaperWords terms, String value) {
        return said(terms, value, "").orElseGet(() -> {
            Matcher figures = BETWEEN.matcher(value);
            if (figures.matches()) {
                return figures.group(1) + terms.get("between") + figures.group(2);
            }
            Matcher words = BEFORE_FIGURE.matcher(value);
            return words.matches() ? said(terms, words.group(1), words.group(2)).orElse(value) : value;
        });
    }

    private static Optional<String> said(PaperWords terms, String words, String figure) {
        String key = PaperWords.key(words);
        return terms.find("said." + key, "figure", figure).or(() -> terms.find("texture." + key));
    }

    private static Optional<String> bodies(PaperWords terms, Map<String, List<String>> bodies) {
        List<String> named = new ArrayList<>();
        bodies.forEach((kind, labels) -> terms.find(
                        "body." + PaperWords.key(kind) + (labels.size() > 1 ? ".several" : ".one"),
                        "labels",
                        terms.row(labels))
                .ifPresent(named::add));
        boolean whole = !named.isEmpty() && named.size() == bodies.size();
        return whole ? Optional.of(terms.row(named)) : Optional.empty();
    }
}
