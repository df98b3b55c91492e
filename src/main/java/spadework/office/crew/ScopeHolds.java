// SPDX-License-Identifier: Apache-2.0
package spadework.office.crew;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import spadework.paperwork.crew.HoldStep;
import spadework.paperwork.scope.ScopeStep;
import spadework.paperwork.scope.ScopeSteps;
import spadework.press.page.PageTexts;

/** The hold points of a scope of work with the pages on which they came to stand. */
final class ScopeHolds {
    /** So many words of a step, behind its number, are met nowhere else in the scope. */
    private static final int WORDS = 8;

    /** What may stand between the number of a step and its text: that it is a hold point, in any language. */
    private static final String HOLD = ".{0,60}?";

    private ScopeHolds() {}

    /**
     * Wall by wall, then that of the pipes.
     *
     * @param scope the scope as it was laid out
     * @throws IOException if it cannot be read
     */
    static List<HoldStep> of(ScopeSteps steps, byte[] scope) throws IOException {
        List<String> pages = PageTexts.of(scope);
        List<HoldStep> holds = new ArrayList<>();
        steps.walls()
                .forEach(wall -> wall.steps().stream()
                        .filter(step -> step.hold() != 0)
                        .forEach(step -> holds.add(hold(step, wall.label(), pages))));
        steps.pipes().stream().filter(step -> step.hold() != 0).forEach(step -> holds.add(hold(step, "", pages)));
        return holds;
    }

    private static HoldStep hold(ScopeStep step, String wall, List<String> pages) {
        return new HoldStep(step.hold(), wall, step.number(), page(step, pages));
    }

    private static OptionalInt page(ScopeStep step, List<String> pages) {
        String begins = Arrays.stream(step.text().split("\\s+"))
                .limit(WORDS)
                .map(Pattern::quote)
                .collect(Collectors.joining(" "));
        Pattern there = Pattern.compile("(?<!\\d)" + step.number() + " " + HOLD + begins);
        return IntStream.rangeClosed(1, pages.size())
                .filter(page -> there.matcher(pages.get(page - 1)).find())
                .findFirst();
    }
}
