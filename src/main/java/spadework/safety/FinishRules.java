// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.job.LimitKind;
import spadework.job.Wall;
import spadework.measure.FilmThickness;
import spadework.pricebook.CodeFilm;
import spadework.pricebook.Film;
import spadework.pricebook.LineItem;
import spadework.takeoff.GroundTakeoff;
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
            found.add(must("backfill-lifts", "", "IBC 1804.3; lifts of 8 in or less are common practice"));
        }
        double graded = facts.job().restoration().regrade().feet();
        if (graded < walls) {
            found.add(advise(
                    "grade-short", "", "IRC R401.3 (2009 edition on)", "graded", round(graded), "walls", round(walls)));
        }
        found.addAll(pastLotLine(facts.job(), graded));
        return found;
    }

    /** Soil shaped along more wall than has its ten feet before the lot line. */
    private static List<Finding> pastLotLine(Job job, double graded) {
        double free = 0;
        List<String> close = new ArrayList<>();
        for (Wall wall : job.walls()) {
            boolean lineInReach = job.site().limits().stream()
                    .filter(limit -> limit.kind() == LimitKind.PROPERTY_LINE
                            && limit.wall().equals(wall.label()))
                    .anyMatch(limit -> limit.distance().compareTo(GroundTakeoff.FALL_OVER) < 0);
            if (lineInReach) {
                close.add(wall.label());
            } else {
                free += wall.length().feet();
            }
        }
        return Found.when(
                !close.isEmpty() && graded > free,
                must(
                        "grade-past-lot-line",
                        String.join(", ", close),
                        "IRC R401.3 (2009 edition on)",
                        "graded",
                        round(graded),
                        "free",
                        round(free)));
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
