// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.drawing.shape.ScaleBar;
import spadework.measure.Length;
import spadework.wording.Language;
import spadework.wording.Wording;

/** Every word on a profile that is not the job's own, in the language of its paper. */
public record ProfileWords(Language language) {
    private static final Wording WORDS = Wording.beside(ProfileWords.class);

    String notMeasured() {
        return WORDS.in(language).get("profile-words.not-measured");
    }

    /** What the rows of the table are called. */
    List<String> heads() {
        return List.of(
                WORDS.in(language).get("profile-words.station"),
                WORDS.in(language).get("profile-words.ground"),
                WORDS.in(language).get("profile-words.invert"),
                WORDS.in(language).get("profile-words.cover"));
    }

    /** The name of the line of the ground. */
    String groundLine() {
        return WORDS.in(language).get("profile-words.ground");
    }

    String benchmark(String benchmark) {
        return WORDS.in(language).get("profile-words.benchmark", benchmark);
    }

    String tooFewLevels() {
        return WORDS.in(language).get("profile-words.too-few-levels-are");
    }

    String title(ProfileChain chain) {
        List<String> way = new ArrayList<>();
        chain.reaches().forEach(reach -> way.add(reach.label()));
        way.add(chain.outlet());
        String to = WORDS.in(language).get("profile-words.to");
        return WORDS.in(language).get("profile-words.title", String.join(to, way));
    }

    /** {@code falls 1.41%}, {@code level}, {@code rises 0.47%}: a rise is against the flow. */
    String slope(ProfileReach reach) {
        if (!reach.isLeveled()) {
            return notMeasured();
        }
        String percent = String.format(Locale.ROOT, "%.2f%%", Math.abs(reach.slope()) * 100);
        if (percent.equals("0.00%")) {
            return WORDS.in(language).get("profile-words.level");
        }
        return reach.slope() > 0
                ? WORDS.in(language).get("profile-words.falls", percent)
                : WORDS.in(language).get("profile-words.rises", percent);
    }

    /** The slope in a sentence. */
    String slopeText(ProfileReach reach) {
        if (!reach.isLeveled()) {
            return WORDS.in(language).get("profile-words.slope-not-measured");
        }
        return reach.slope() < 0 ? WORDS.in(language).get("profile-words.against", slope(reach)) : slope(reach);
    }

    String outlet(ProfileChain chain) {
        String level = chain.outletLevel().map(Length::levelText).orElse(notMeasured());
        return WORDS.in(language).get("profile-words.outlet", chain.outlet(), chain.place(), level);
    }

    String kind(ProfileReach.Kind kind) {
        String key = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return WORDS.in(language).get("profile-words.kind." + key);
    }

    /** Soil over the pipe; none where the pipe comes out of the ground. */
    String cover(Length cover) {
        return cover.isPositive() ? cover.text() : WORDS.in(language).get("profile-words.no-cover");
    }

    static String station(double feet) {
        return String.format(Locale.ROOT, "%.0f ft", feet);
    }

    /** {@code 92.12 ft}, or {@code 92.12 / 92.10} where two were measured and differ. */
    String levels(List<Length> levels) {
        List<String> texts = levels.stream().map(Length::levelText).distinct().toList();
        if (texts.isEmpty()) {
            return notMeasured();
        }
        return texts.size() == 1 ? texts.get(0) : String.join(" / ", texts).replace(ScaleBar.FEET, "");
    }

    static String times(double exaggeration) {
        return String.format(Locale.ROOT, "%.0f", exaggeration);
    }

    /** What the scale bar says where no height is drawn. */
    String scale() {
        return WORDS.in(language).get("profile-words.scale");
    }

    String scale(double exaggeration) {
        return WORDS.in(language).get("profile-words.scale-heights", times(exaggeration));
    }
}
