// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.Locale;
import spadework.measure.Length;
import spadework.wording.Wording;

/** Every word on a profile that is not the job's own. */
public final class ProfileWords {
    private static final Wording WORDS = Wording.beside(ProfileWords.class);

    static final String NOT_MEASURED = "not measured";
    static final String STATION = "Station";
    static final String GROUND = "Ground";
    static final String INVERT = "Pipe bottom";
    static final String COVER = "Cover";
    static final String GROUND_LINE = "Ground";
    static final String BENCHMARK = "Levels from: ";
    static final String TOO_FEW_LEVELS = WORDS.get("profile-words.too-few-levels-are");
    static final String SCALE = "along the pipe. Levels in ft.";
    static final String ARROW = " to ";

    private ProfileWords() {}

    static String title(ProfileChain chain) {
        StringBuilder title = new StringBuilder("Profile ");
        chain.reaches().forEach(reach -> title.append(reach.label()).append(ARROW));
        return title.append(chain.outlet()).toString();
    }

    /** {@code falls 1.41%}, {@code level}, {@code rises 0.47%}: a rise is against the flow. */
    static String slope(ProfileReach reach) {
        if (!reach.isLeveled()) {
            return NOT_MEASURED;
        }
        String percent = String.format(Locale.ROOT, "%.2f%%", Math.abs(reach.slope()) * 100);
        if (percent.equals("0.00%")) {
            return "level, no fall";
        }
        return (reach.slope() > 0 ? "falls " : "rises ") + percent;
    }

    /** The slope in a sentence. */
    static String slopeText(ProfileReach reach) {
        if (!reach.isLeveled()) {
            return "slope " + NOT_MEASURED;
        }
        return slope(reach) + (reach.slope() < 0 ? " against the flow" : "");
    }

    static String outlet(ProfileChain chain) {
        String level = chain.outletLevel().map(Length::levelText).orElse(NOT_MEASURED);
        return chain.outlet() + ": " + chain.place() + ", level " + level;
    }

    static String kind(ProfileReach.Kind kind) {
        return switch (kind) {
            case DRAIN -> "perforated pipe";
            case MAIN -> "solid pipe";
            case ROOF_LINE -> "roof water pipe";
        };
    }

    /** Soil over the pipe; none where the pipe comes out of the ground. */
    static String cover(Length cover) {
        return cover.isPositive() ? cover.text() : "none";
    }

    static String station(double feet) {
        return String.format(Locale.ROOT, "%.0f ft", feet);
    }

    static String times(double exaggeration) {
        return String.format(Locale.ROOT, "%.0f", exaggeration);
    }

    static String scale(double exaggeration) {
        return "along the pipe; heights are drawn " + times(exaggeration) + " times as large. Levels in ft.";
    }
}
