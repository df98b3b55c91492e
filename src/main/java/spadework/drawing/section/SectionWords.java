// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import spadework.ground.DepthFrom;
import spadework.ground.DigBody;
import spadework.job.Footing;
import spadework.job.Protection;
import spadework.job.SiteLimit;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.trench.Bank;
import spadework.trench.Benching;
import spadework.trench.TrenchLimits;
import spadework.wording.Language;
import spadework.wording.Wording;

/** Every word on a section that is not the job's own, in the language of its paper. */
public record SectionWords(Language language) {
    private static final Wording WORDS = Wording.beside(SectionWords.class);

    String grade() {
        return WORDS.in(language).get("section-words.grade");
    }

    String spoil() {
        return WORDS.in(language).get("section-words.spoil");
    }

    String noSpoil() {
        return WORDS.in(language).get("section-words.no-soil");
    }

    String backfill() {
        return WORDS.in(language).get("section-words.backfill-packed-in-lifts");
    }

    String fabric() {
        return WORDS.in(language).get("section-words.fabric-turned-up-in");
    }

    String noDrain() {
        return WORDS.in(language).get("section-words.no-drain-at-this");
    }

    String scale() {
        return WORDS.in(language).get("section-words.to-scale");
    }

    String measured() {
        return WORDS.in(language).get("section-words.measured");
    }

    String unmeasured() {
        return WORDS.in(language).get("section-words.not-measured");
    }

    String floor() {
        return WORDS.in(language).get("section-words.floor");
    }

    /** How far the heap stays back from the edge. */
    String spoilBack() {
        return WORDS.in(language).get("section-words.spoil-back", TrenchLimits.SPOIL_BACK.text());
    }

    /** {@code 60 mil dry: waterproofing}, or the word alone. */
    String promise(WallCovering covering) {
        return covering.film().isEmpty()
                ? covering.word()
                : WORDS.in(language).get("section-words.dry", covering.film(), covering.word());
    }

    /** What is said of a bank that no table covers; empty for any other. */
    String engineer(Length depth) {
        return TrenchLimits.isEngineered(depth)
                ? WORDS.in(language).get("section-words.engineer", TrenchLimits.ENGINEER_OVER.text())
                : "";
    }

    String title(List<String> walls) {
        return WORDS.in(language).get("section-words.section-at-deeper-end", walls(walls));
    }

    /** {@code wall A}, {@code walls A, B, and C}. */
    String walls(List<String> labels) {
        String row = language.row(labels);
        return labels.size() == 1
                ? WORDS.in(language).get("section-words.wall", row)
                : WORDS.in(language).get("section-words.walls", row);
    }

    /** A trench or a hole away from the walls, as {@code main M1}. */
    String body(DigBody body) {
        return WORDS.in(language).get("section-words.body." + key(body.kind()), body.label());
    }

    /** Where its depth comes from. */
    String from(DepthFrom from) {
        return WORDS.in(language).get("section-words.depth-from." + key(from));
    }

    /** The footing's size, and whether it is only the usual one. */
    String footing(Footing footing) {
        String thick = footing.thickness().text();
        String out = footing.projection().text();
        return footing.measured()
                ? WORDS.in(language).get("section-words.footing-thick-out", thick, out)
                : WORDS.in(language).get("section-words.footing-usual", thick, out);
    }

    String stone(String height) {
        return WORDS.in(language).get("section-words.washed-stone-high", height);
    }

    String pipe(Length outside, Length bedding) {
        return WORDS.in(language).get("section-words.perforated-pipe-outside-on", inches(outside), inches(bedding));
    }

    /** How the bank stands, with run for each rise where it is laid back. */
    String bank(Bank bank) {
        String run = Figures.inWorking(bank.slope().value());
        return switch (bank.protection()) {
            case SHIELDED -> WORDS.in(language).get("section-words.shield-between-upright-banks");
            case UPRIGHT -> WORDS.in(language).get("section-words.upright-bank-no-support");
            case BENCHED -> WORDS.in(language).get("section-words.bank-in-steps-up", Benching.RISE.text(), run);
            case SLOPED -> WORDS.in(language).get("section-words.bank-laid-back", run);
        };
    }

    /** What kept the bank from being laid back; empty where nothing did. */
    String inTheWay(Bank bank) {
        return bank.inTheWay()
                .map(limit -> WORDS.in(language)
                        .get(
                                "section-words.in-the-way",
                                kind(limit),
                                limit.distance().text()))
                .orElse("");
    }

    /** What stands before the wall, and how far from it. */
    String beside(SiteLimit limit) {
        return WORDS.in(language)
                .get(
                        "section-words.beside",
                        capital(kind(limit)),
                        limit.distance().text());
    }

    private String kind(SiteLimit limit) {
        return WORDS.in(language).get("section-words.limit." + key(limit.kind()));
    }

    String soil(Bank bank) {
        String type = WORDS.in(language).get("section-words.soil." + key(bank.soil()));
        if (bank.protection() == Protection.UPRIGHT) {
            return WORDS.in(language).get("section-words.soil-upright", type);
        }
        return bank.slope().number() == 0 ? type : WORDS.in(language).get("section-words.soil-laid-back", type);
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    static String small(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A diameter in inches with at most two decimals, as {@code 4.63 in}. */
    private static String inches(Length length) {
        double rounded = Math.rint(length.inches() * 100) / 100;
        return Figures.inWorking(BigDecimal.valueOf(rounded)) + " in";
    }
}
