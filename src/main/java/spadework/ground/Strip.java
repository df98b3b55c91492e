// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.List;
import spadework.trench.BankLine;

/**
 * The ground in front of one wall that is dug out, or filled with stone, up to a top that follows stations. At a
 * height z over the bottom it reaches p + B and the bank from the wall's face; below the top of the footing its inner p
 * stays, for the footing stands there. All in feet, none negative.
 *
 * @param wall label of the wall
 * @param projection of the footing beyond the wall's face, p
 * @param width of the trench's bottom beside the footing, B
 * @param line of the outer bank
 * @param footing thickness of the footing, tf
 * @param tops stations from 0 to the wall's length, in order; two at one place make a step
 */
public record Strip(String wall, double projection, double width, BankLine line, double footing, List<Top> tops) {

    public Strip {
        tops = List.copyOf(tops);
    }

    public double length() {
        return tops.get(tops.size() - 1).at();
    }

    /** How far it reaches from the wall's face at that height over the bottom. */
    public double reach(double height) {
        return projection + width + line.out(height);
    }

    public double highest() {
        return tops.stream().mapToDouble(Top::height).max().orElse(0);
    }

    /** True where its top is one height all along. */
    public boolean isLevel() {
        double first = tops.get(0).height();
        return tops.stream().allMatch(top -> Math.abs(top.height() - first) < 1e-9);
    }

    /** Height of the top at the wall's start or its end. */
    public double topAt(boolean atEnd) {
        return tops.get(atEnd ? tops.size() - 1 : 0).height();
    }

    /** The same seen from the wall's other end. */
    public Strip reversed() {
        List<Top> back = new ArrayList<>();
        for (int i = tops.size() - 1; i >= 0; i--) {
            back.add(new Top(length() - tops.get(i).at(), tops.get(i).height()));
        }
        return new Strip(wall, projection, width, line, footing, back);
    }

    /** True if both have the same section and the same level top. */
    boolean isLike(Strip other) {
        return isLevel()
                && other.isLevel()
                && same(projection, other.projection)
                && same(width, other.width)
                && line.isLike(other.line)
                && same(footing, other.footing)
                && same(highest(), other.highest());
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) < 1e-9;
    }
}
