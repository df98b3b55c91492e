// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.finding.Finding;
import spadework.job.Wall;
import spadework.measure.FilmThickness;
import spadework.pricebook.CodeFilm;
import spadework.pricebook.Film;
import spadework.pricebook.LineItem;
import spadework.takeoff.wall.WallFace;

/** The film on the wall and the words it allows; the ground around it; inspections. */
final class FinishRules implements Rule {
    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        double walls = 0;
        for (Wall wall : facts.job().walls()) {
            walls += wall.length().feet();
            WallFace.coverItem(wall, facts.book())
                    .flatMap(LineItem::film)
                    .ifPresent(film -> found.addAll(film(wall, film)));
        }
        if (walls > 0) {
            found.add(must("inspection-holds", "", "IRC R109.1 (from memory); local building department"));
            found.add(must("siding-clearance", "", "IRC R317.1, R404.1.6 (2009 edition on)"));
            found.add(must("backfill-lifts", "", "IBC 1803.2; lifts of 8 in or less are common practice"));
        }
        double graded = facts.job().restoration().regrade().feet();
        if (graded < walls) {
            found.add(advise(
                    "grade-short", "", "IRC R401.3 (2009 edition on)", "graded", round(graded), "walls", round(walls)));
        }
        return found;
    }

    private static List<Finding> film(Wall wall, Film film) {
        FilmThickness dry = WallFace.dryFilm(wall, film);
        return Found.when(
                !CodeFilm.isWaterproofing(film.generic(), dry),
                advise(
                        "film-dampproofing",
                        wall.label(),
                        "IRC R406.1, R406.2 (newer list; older editions differ)",
                        "dry",
                        dry.text(),
                        "least",
                        CodeFilm.printed(film.generic()).orElse("no film on the list")));
    }

    private static String round(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
