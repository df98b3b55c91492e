// SPDX-License-Identifier: Apache-2.0
package spadework.office.aftercare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import spadework.warranty.Card;
import spadework.warranty.CardRow;
import spadework.warranty.Claim;
import spadework.warranty.ClaimStep;
import spadework.warranty.CoveredPart;
import spadework.warranty.CoveredRun;
import spadework.warranty.Warranty;

/** Warranties as lines of text for the screen. */
public final class WarrantyText {
    private WarrantyText() {}

    static List<String> of(Warranty warranty, LocalDate on) {
        List<String> lines = new ArrayList<>();
        lines.add("Warranty " + warranty.number()
                + warranty.reissueOf().map(first -> ", reissued from " + first).orElse(""));
        lines.add("  for " + String.join(" and ", warranty.parties().owners()) + ", "
                + warranty.parties().address());
        lines.add("  given by " + warranty.parties().contractor().name() + ", "
                + warranty.parties().contractor().phone());
        lines.add("  walls: " + covered(warranty.coverage().walls()));
        if (!warranty.coverage().runs().isEmpty()) {
            lines.add("  pipes: " + covered(warranty.coverage().runs()));
        }
        for (CoveredPart part : warranty.coverage().parts()) {
            lines.add("  " + part.part() + ": " + part.firstDay() + " to " + part.lastDay() + ", " + state(part, on)
                    + ": " + part.promise());
        }
        lines.add("  claims are answered within " + warranty.terms().replyDays() + " working days, looked at within "
                + warranty.terms().visitDays() + ", found in writing within "
                + warranty.terms().findingDays() + " of the look; a repair begins within "
                + warranty.terms().beginDays() + " days after that");
        lines.add(
                warranty.terms().transfers() == 0
                        ? "  it does not pass to a later owner"
                        : "  it may pass to a later owner, times left: "
                                + warranty.terms().transfers() + "; notice within "
                                + warranty.terms().transferNoticeDays() + " days of the sale");
        warranty.coverage().notCovered().forEach(item -> lines.add("  not covered: " + item));
        warranty.terms().duties().forEach(item -> lines.add("  duty: " + item));
        return plain(lines);
    }

    static List<String> of(Claim claim) {
        List<String> lines = new ArrayList<>();
        lines.add("Claim " + claim.number() + ": " + claim.state().words());
        for (ClaimStep step : claim.steps()) {
            String facts = step.facts().entrySet().stream()
                    .map(fact -> fact.getKey() + " " + fact.getValue())
                    .collect(Collectors.joining("; "));
            lines.add("  " + step.on() + "  " + facts);
        }
        return plain(lines);
    }

    static List<String> of(Card card) {
        List<String> lines = new ArrayList<>();
        lines.add("Maintenance for warranty " + card.warranty().number() + ", "
                + card.warranty().parties().address());
        for (CardRow row : card.rows()) {
            List<String> duties = row.duties().stream()
                    .map(duty -> duty.replaceFirst("(?<!\\.)$", "."))
                    .toList();
            lines.add(row.season().words() + " " + row.year() + ", " + row.from() + " to " + row.until() + ": "
                    + String.join(" ", duties));
            row.ending().forEach(part -> lines.add("  " + part.part() + " ends on " + part.lastDay()));
        }
        return plain(lines);
    }

    /** Without what could steer a terminal: somebody typed it. */
    private static List<String> plain(List<String> lines) {
        return lines.stream().map(line -> line.replaceAll("\\p{Cntrl}+", " ")).toList();
    }

    private static String covered(List<CoveredRun> all) {
        return all.stream()
                .map(each -> each.label() + ", " + each.what() + ", " + each.length())
                .collect(Collectors.joining("; "));
    }

    private static String state(CoveredPart part, LocalDate on) {
        if (part.isInForce(on)) {
            return "in force on " + on;
        }
        return on.isBefore(part.firstDay()) ? "not begun on " + on : "ended before " + on;
    }
}
