// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import spadework.measure.Figures;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.pricebook.LineItem;
import spadework.takeoff.TakeoffLine;

/** Steps put into words: each with the lines that it does. */
final class StepTexts {
    private final PaperWords terms;
    private final StepLines lines;
    private final List<ScopeStep> steps = new ArrayList<>();
    private final String wall;

    /** @param wall label of the wall; empty for a page of no wall */
    StepTexts(Dossier dossier, StepLines lines, String wall) {
        this.terms = dossier.terms();
        this.lines = lines;
        this.wall = wall;
    }

    /** A step that is due where a line is done by it. */
    void sold(StepKind kind, String variant, String... values) {
        if (!codes(kind).isEmpty()) {
            add(kind, variant, List.of(), values);
        }
    }

    /** A step that belongs to the work, whether or not a line is done by it. */
    void add(StepKind kind, String variant, List<StepEvidence> evidence, String... values) {
        steps.add(new ScopeStep(0, kind, text(kind.key() + variant, values), kind.rule(), evidence, codes(kind)));
    }

    boolean isSold(StepKind kind) {
        return !codes(kind).isEmpty();
    }

    String text(String key, String... values) {
        return terms.get(key, StepFigure.values(values).toArray(String[]::new));
    }

    /** The steps with those that were put in by hand among them, each after the steps of its time. */
    List<ScopeStep> with(StepPage page) {
        List<ScopeStep> all = new ArrayList<>(steps);
        for (TakeoffLine line : lines.byHand(page, wall)) {
            int at = all.size();
            while (at > 0 && isLater(all.get(at - 1), line)) {
                at--;
            }
            all.add(at, byHand(line));
        }
        return all;
    }

    private boolean isLater(ScopeStep step, TakeoffLine line) {
        return step.kind() != StepKind.ITEM
                && (step.kind().when().compareTo(lines.when(line)) > 0 || step.kind() == StepKind.HOLD_2);
    }

    private ScopeStep byHand(TakeoffLine line) {
        LineItem item = lines.item(line);
        String quantity = line.quantity().compareTo(BigDecimal.ONE) == 0
                        && line.unit().symbol().equals("ea")
                ? ""
                : ", "
                        + terms.measured(
                                        Figures.counted(line.quantity(), line.unit()),
                                        line.unit().symbol())
                                .replace(".0 ", " ");
        String why = line.reason().isEmpty() ? "" : " " + sentence(why(line.reason()));
        return new ScopeStep(
                0, StepKind.ITEM, terms.own(item.name()) + quantity + "." + why, "", List.of(), List.of(line.code()));
    }

    /** A line of an assembly says that one's name first: {@code Window well, new: cracked}. */
    private String why(String reason) {
        int colon = reason.indexOf(": ");
        return colon < 0 ? terms.own(reason) : terms.own(reason.substring(0, colon)) + reason.substring(colon);
    }

    private static String sentence(String text) {
        String full = Character.toUpperCase(text.charAt(0)) + text.substring(1);
        return full.endsWith(".") ? full : full + ".";
    }

    private List<String> codes(StepKind kind) {
        return lines.codes(kind, wall);
    }
}
