// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known name that somebody most likely meant. */
public final class NearestName {
    private NearestName() {}

    /** The nearest known name, if one is near enough to suggest: at most a third of the letters differ, or two. */
    public static Optional<String> of(String written, Collection<String> known) {
        int near = Math.max(2, written.length() / 3);
        return known.stream()
                .filter(name -> Math.abs(name.length() - written.length()) <= near)
                .filter(name -> distance(written, name) <= near && distance(written, name) < name.length())
                .min(Comparator.<String>comparingInt(name -> distance(written, name))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** Edits between two names, capitals apart: put in, take out, change, or swap two neighbors. */
    static int distance(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[][] edits = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                edits[i][j] = i == 0 || j == 0 ? i + j : least(edits, a, b, i, j);
            }
        }
        return edits[a.length()][b.length()];
    }

    private static int least(int[][] edits, String a, String b, int i, int j) {
        int change = edits[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(change, 1 + Math.min(edits[i - 1][j], edits[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, edits[i - 2][j - 2] + 1) : best;
    }
}
