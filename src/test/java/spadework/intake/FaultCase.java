// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One row of a table of faults: a faultless file in which one thing is said otherwise, and what comes of it.
 *
 * @param rule what the row shows
 * @param from what the file says
 * @param to what it says now
 * @param faults place, found, allowed and fix of each fault, a line each
 */
public record FaultCase(String rule, String from, String to, List<String> faults) {

    /** The rows of a table beside the samples; lines that begin with # are headings. */
    static Stream<FaultCase> table(String name) {
        String rows = SampleFiles.resource(name)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .collect(Collectors.joining("\n"));
        return Arrays.stream(rows.split("(?m)^== "))
                .filter(row -> !row.isBlank())
                .map(FaultCase::row);
    }

    /** The faults in the form in which a table has them. */
    static List<String> lines(List<String> messages) {
        return messages.stream()
                .flatMap(message -> Stream.of(message.replace(": found ", "\nfound ")
                        .replace("; allowed: ", "\nallowed ")
                        .replace("; fix: ", "\nfix ")
                        .split("\n")))
                .toList();
    }

    private static FaultCase row(String text) {
        List<String> lines = text.strip().lines().toList();
        String from = lines.get(1).substring(4);
        String to = lines.get(2).substring(3).stripLeading();
        return new FaultCase(lines.get(0), from, to, lines.subList(3, lines.size()));
    }

    @Override
    public String toString() {
        return rule;
    }
}
