// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

/**
 * A trench or a hole away from the walls that people go into, as the papers describe it.
 *
 * @param kind one word: main, roof-line, discharge or sump-pit
 * @param label of the pipe or the outlet
 * @param length along it; empty for a hole
 * @param depth grade to its bottom at the deepest place
 * @param width of its bottom
 * @param protection one word: sloped, benched, shielded or upright
 * @param slope horizontal for each foot up, as {@code 1}
 * @param deep whether it is so deep that the law asks for protection whatever the soil
 * @param wayOut whether it is so deep that the law asks for a ladder
 */
public record DigWork(
        String kind,
        String label,
        String length,
        String depth,
        String width,
        String protection,
        String slope,
        boolean deep,
        boolean wayOut) {

    /** Whether its bank may stand straight up where the competent person finds it safe. */
    public boolean isShallow() {
        return !deep && protection.equals("upright");
    }
}
