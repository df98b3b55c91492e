// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.money.Dollars;
import spadework.paperwork.work.WallWork;

/**
 * An option with what it changes.
 *
 * @param price with any sales tax; below zero where it takes work away
 * @param state {@code open} until the proposal is accepted, then {@code taken} or {@code declined}
 * @param walls walls that it adds
 * @param moves quantities that it changes
 */
public record OptionRow(
        String label, String title, String why, Dollars price, String state, List<WallWork> walls, List<Move> moves) {

    /** A quantity that differs, as {@code +26 ft}. */
    public record Move(String label, String what, String difference) {}

    /** The labels of what it changes, each once. */
    public List<String> places() {
        return moves.stream().map(Move::label).distinct().toList();
    }
}
