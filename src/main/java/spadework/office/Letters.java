// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Address;
import spadework.job.Job;
import spadework.press.font.GlyphCoverage;
import spadework.press.font.GlyphGap;

/** Names and addresses that the type of the papers cannot print: a contract has to call its parties by their names. */
final class Letters {
    private static final int LAST_THAT_IS_SURE = '\u017F';
    private static final String PRACTICE = "common practice, no source";

    private Letters() {}

    static List<Finding> of(Job job, Company company) {
        return Stream.of(
                        job.customer().names().stream(),
                        Stream.of(job.site().address().text(), company.name()),
                        job.customer().mailing().map(Address::text).stream())
                .flatMap(texts -> texts)
                .flatMap(text -> missing(text).stream())
                .toList();
    }

    /** The type is looked at only where a letter lies beyond the Latin ones that it has all of. */
    private static Optional<Finding> missing(String text) {
        if (text.chars().allMatch(c -> c >= ' ' && c <= LAST_THAT_IS_SURE)) {
            return Optional.empty();
        }
        String letters = GlyphCoverage.bundled().missing(text).stream()
                .map(GlyphGap::codePointText)
                .collect(Collectors.joining(", "));
        return letters.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Finding("letters-unprintable", Severity.MUST, text, Map.of("letters", letters), PRACTICE));
    }
}
