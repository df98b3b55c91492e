// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.util.List;
import java.util.Locale;
import spadework.job.Footing;
import spadework.job.LimitKind;
import spadework.job.Protection;
import spadework.job.SiteLimit;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.measure.Series;
import spadework.trench.Bank;
import spadework.trench.Benching;
import spadework.trench.TrenchLimits;
import spadework.wording.Wording;

/** Every word on a section that is not the job's own. */
public final class SectionWords {
    private static final Wording WORDS = Wording.beside(SectionWords.class);

    static final String DRY = " dry: ";
    static final String GRADE = "Grade";
    static final String SPOIL = "Soil heap";
    static final String NO_SPOIL = WORDS.get("section-words.no-soil");
    static final String BACKFILL = WORDS.get("section-words.backfill-packed-in-lifts");
    static final String FABRIC = WORDS.get("section-words.fabric-turned-up-in");
    static final String NO_DRAIN = WORDS.get("section-words.no-drain-at-this");
    static final String SCALE = WORDS.get("section-words.to-scale");
    static final String MEASURED = WORDS.get("section-words.measured");
    static final String UNMEASURED = WORDS.get("section-words.not-measured");
    static final String SPOIL_BACK = "at least " + TrenchLimits.SPOIL_BACK.text();
    static final String FLOOR = "Floor inside";

    private SectionWords() {}

    /** What is said of a bank that no table covers; empty for any other. */
    static String engineer(Length depth) {
        return TrenchLimits.isEngineered(depth)
                ? "; over " + TrenchLimits.ENGINEER_OVER.text() + " an engineer designs it"
                : "";
    }

    static String title(List<String> walls) {
        return WORDS.get("section-words.section-at-deeper-end", walls(walls));
    }

    /** {@code wall A}, {@code walls A, B, and C}. */
    static String walls(List<String> labels) {
        if (labels.size() == 1) {
            return "wall " + labels.get(0);
        }
        return "walls " + Series.text(labels);
    }

    /** The footing's size, and whether it is only the usual one. */
    static String footing(Footing footing) {
        String thick = footing.thickness().text();
        String out = footing.projection().text();
        return footing.measured()
                ? WORDS.get("section-words.footing-thick-out", thick, out)
                : WORDS.get("section-words.footing-usual", thick, out);
    }

    static String stone(String height) {
        return WORDS.get("section-words.washed-stone-high", height);
    }

    static String pipe(Length outside, Length bedding) {
        return WORDS.get("section-words.perforated-pipe-outside-on", inches(outside), inches(bedding));
    }

    /** How the bank stands, with run for each rise where it is laid back. */
    static String bank(Bank bank) {
        return switch (bank.protection()) {
            case SHIELDED -> WORDS.get("section-words.shield-between-upright-banks");
            case UPRIGHT -> WORDS.get("section-words.upright-bank-no-support");
            case BENCHED ->
                WORDS.get(
                        "section-words.bank-in-steps-up",
                        Benching.RISE.text(),
                        Figures.inWorking(bank.slope().value()));
            case SLOPED ->
                WORDS.get(
                        "section-words.bank-laid-back",
                        Figures.inWorking(bank.slope().value()));
        };
    }

    /** What kept the bank from being laid back; empty where nothing did. */
    static String inTheWay(Bank bank) {
        return bank.inTheWay()
                .map(limit -> "no room to slope: " + kind(limit) + " "
                        + limit.distance().text() + " off the wall")
                .orElse("");
    }

    /** What stands before the wall, and how far from it. */
    static String beside(SiteLimit limit) {
        String kind = kind(limit);
        return Character.toUpperCase(kind.charAt(0)) + kind.substring(1) + ", "
                + limit.distance().text();
    }

    private static String kind(SiteLimit limit) {
        return limit.kind() == LimitKind.NEIGHBOR_FOOTING
                ? "neighbor's footing"
                : limit.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static String soil(Bank bank) {
        String type = switch (bank.soil()) {
            case STABLE_ROCK -> "stable rock";
            case A, B, C -> "soil type " + bank.soil().name();
            case NOT_CLASSED -> "soil not classed";
        };
        if (bank.protection() == Protection.UPRIGHT) {
            return type + "; only if the competent person finds it safe";
        }
        return bank.slope().number() == 0 ? type : "run : rise, " + type;
    }

    /** A diameter in inches with at most two decimals, as {@code 4.63 in}. */
    private static String inches(Length length) {
        double rounded = Math.rint(length.inches() * 100) / 100;
        return Figures.inWorking(java.math.BigDecimal.valueOf(rounded)) + " in";
    }
}
