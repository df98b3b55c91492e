// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Walls that words of a job name, as {@code sump outside wall C}. */
public final class NamedWalls {
    private static final Pattern WALL =
            Pattern.compile("\\b(?:wall|pared) ([\\p{L}\\p{N}-]+)", Pattern.CASE_INSENSITIVE);

    private NamedWalls() {}

    /** The wall that the words name; empty where they name none, several, or one that the job does not have. */
    public static Optional<Wall> only(Job job, String words) {
        Matcher named = WALL.matcher(words);
        List<String> labels =
                named.results().map(found -> found.group(1)).distinct().toList();
        return labels.size() == 1
                ? job.walls().stream()
                        .filter(wall -> wall.label().equalsIgnoreCase(labels.get(0)))
                        .findFirst()
                : Optional.empty();
    }
}
