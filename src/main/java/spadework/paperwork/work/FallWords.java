// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import spadework.ground.DrainLine;
import spadework.job.FootingDrain;
import spadework.measure.Length;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.water.DrainStretch;

/** Levels of a pipe in words: from where to where, and how it falls between. */
public final class FallWords {
    private FallWords() {}

    /** A drain along one wall alone, as "92.48 ft to 92.27 ft, falls 2½ in (0.5%)"; empty where a level is missing. */
    public static String at(Dossier dossier, FootingDrain drain, String wall) {
        List<DrainStretch> stretches =
                DrainLine.stretches(dossier.job(), dossier.book(), drain).get(wall);
        return stretches.stream()
                .map(one -> of(dossier.terms(), one.from(), one.to(), one.length(), "levels"))
                .collect(Collectors.joining("; "));
    }

    /** From where water comes in to where it goes out: a pipe that rises on that way is said to rise. */
    static String of(PaperWords terms, Length start, Length end, Length length, String falling) {
        if (!length.isPositive()) {
            return "";
        }
        double fall = Math.abs(start.minus(end).feet());
        return terms.get(
                start.compareTo(end) < 0 ? "levels.rise" : falling,
                "start",
                start.levelText(),
                "end",
                end.levelText(),
                "fall",
                Length.ofFeet(fall).text(),
                "slope",
                String.format(Locale.ROOT, "%.1f%%", fall / length.feet() * 100));
    }
}
