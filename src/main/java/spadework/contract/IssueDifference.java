// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.money.Dollars;
import spadework.pricing.OfferedPrice;
import spadework.pricing.SectionPrice;
import spadework.takeoff.Takeoff;

/**
 * What moved between two issues of a proposal, in money and in scope.
 *
 * @param since date of the issue before
 * @param before its total
 * @param after the total now
 * @param sections the section prices that differ
 * @param quantities the measured quantities that differ
 */
public record IssueDifference(
        LocalDate since, Dollars before, Dollars after, List<SectionMove> sections, List<QuantityChange> quantities) {

    /** A section whose price differs; zero where it was not there, or is there no more. */
    public record SectionMove(String name, Dollars before, Dollars after) {

        /** After less before. */
        public Dollars difference() {
            return after.minus(before);
        }
    }

    public IssueDifference {
        sections = List.copyOf(sections);
        quantities = List.copyOf(quantities);
    }

    /** Compares two issues. */
    public static IssueDifference between(
            LocalDate since, OfferedPrice then, Takeoff measured, OfferedPrice now, Takeoff measuredNow) {
        return new IssueDifference(
                since,
                then.total(),
                now.total(),
                moves(then.sections(), now.sections()),
                QuantityChanges.between(measured, measuredNow));
    }

    /** The sections whose prices differ, in the order of the later ones. */
    static List<SectionMove> moves(List<SectionPrice> then, List<SectionPrice> now) {
        Map<String, Dollars> gone = new LinkedHashMap<>();
        then.forEach(section -> gone.put(section.section().name(), section.price()));
        List<SectionMove> moves = new ArrayList<>();
        for (SectionPrice section : now) {
            String name = section.section().name();
            Dollars was = gone.containsKey(name) ? gone.remove(name) : Dollars.ZERO;
            if (!was.equals(section.price())) {
                moves.add(new SectionMove(name, was, section.price()));
            }
        }
        gone.forEach((name, was) -> moves.add(new SectionMove(name, was, Dollars.ZERO)));
        return moves;
    }
}
