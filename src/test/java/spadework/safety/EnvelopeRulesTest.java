// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Condition;
import spadework.job.Footing;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.LimitKind;
import spadework.job.Opening;
import spadework.job.Restoration;
import spadework.job.SiteLimit;
import spadework.job.Surface;
import spadework.job.Unseen;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.Water;
import spadework.job.Work;
import spadework.measure.Area;
import spadework.measure.Length;

/** Stone, openings, old paint, room and roots at a wall, on both sides of each threshold. */
class EnvelopeRulesTest {

    private static List<Finding> found(Job job, String id) {
        return Checked.findings(job).stream().filter(f -> f.id().equals(id)).toList();
    }

    private static Wall wall(double start, double end, List<Opening> openings, int wells) {
        Wall w = Jobs.wall();
        return new Wall(
                w.label(),
                w.where(),
                w.place(),
                new WallDepth(Length.ofFeet(start), Length.ofFeet(end)),
                w.footing(),
                w.surface(),
                openings,
                wells,
                w.digging());
    }

    /**
     * Stone stands 6 in over the footing's top (IRC R405.1) and 6 in of soil belong over it: 12 in where the wall is
     * least deep, at whichever end that is.
     */
    @ParameterizedTest(name = "{0} to {1} in to the footing: {2}")
    @CsvSource({"60, 12,   ", "60, 11.5, 5½ in", "11.5, 60, 5½ in", "12, 60,   ", "9, 9,     3 in"})
    void soilOverTheStoneWhereItIsThinnest(double start, double end, String over) {
        List<Finding> found = found(Jobs.job(wall(start / 12, end / 12, List.of(), 0)), "stone-shallow");
        assertThat(found).extracting(f -> f.values().get("over")).isEqualTo(over == null ? List.of() : List.of(over));
        assertThat(found).allSatisfy(f -> {
            assertThat(f.severity()).isEqualTo(Severity.MUST);
            assertThat(f.values()).containsEntry("height", "1 ft 2 in");
        });
    }

    /** A window below grade stands in a well that is drained, or gets one. */
    @ParameterizedTest(name = "{0} openings, {1} wells: drained {2}, without well {3}")
    @CsvSource({"0, 0, false, false", "1, 0, false, true", "1, 1, true, false", "0, 1, true, false"})
    void windowsBelowGrade(int openings, int wells, boolean drained, boolean without) {
        List<Opening> list =
                openings == 0 ? List.of() : List.of(new Opening("window", 1, Length.ofFeet(3), Length.ofFeet(1)));
        Job job = Jobs.job(wall(5, 5, list, wells));
        assertThat(found(job, "well-drained")).hasSize(drained ? 1 : 0);
        assertThat(found(job, "opening-without-well")).hasSize(without ? 1 : 0);
    }

    private static Job painted(Integer year, Surface surface) {
        Condition c = Jobs.sound();
        Condition condition =
                new Condition(surface, c.cracks(), false, false, c.bow(), false, c.tiedToFloor(), c.unseen());
        return Jobs.job(
                Jobs.builtIn(Jobs.site(), Optional.ofNullable(year)), Jobs.water(), Jobs.with(Jobs.wall(), condition));
    }

    private static Job withoutWalls() {
        Water none = new Water(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        return Jobs.job(Jobs.site(), none);
    }

    /** 40 CFR 745 subpart E: houses built before 1978; a year that nobody knows may be one of them. */
    @Test
    void oldPaint() {
        assertThat(found(painted(1977, Surface.PAINTED), "lead-paint"))
                .extracting(f -> f.values().get("built"))
                .containsExactly("built 1977");
        assertThat(found(painted(null, Surface.PAINTED), "lead-paint"))
                .extracting(f -> f.values().get("built"))
                .containsExactly("year not known");
        assertThat(found(painted(1990, Surface.UNKNOWN), "surface-unknown")).hasSize(1);
        assertThat(found(painted(1990, Surface.PAINTED), "surface-unknown")).isEmpty();
        assertThat(found(painted(1990, Surface.BARE), "dust-and-fumes")).hasSize(1);
        assertThat(found(withoutWalls(), "dust-and-fumes")).isEmpty();
    }

    /** What nobody looked at is never taken as sound. */
    @Test
    void whatWasNotSeenIsToldByItself() {
        Condition c = Jobs.sound();
        Condition unseen = new Condition(
                c.surface(),
                c.cracks(),
                false,
                false,
                c.bow(),
                false,
                c.tiedToFloor(),
                java.util.Set.of(Unseen.CRACKS, Unseen.HORIZONTAL_CRACK, Unseen.FOOTING));
        assertThat(Checked.findings(Jobs.job(Jobs.with(Jobs.wall(), unseen))))
                .extracting(Finding::id)
                .filteredOn(id -> id.startsWith("unseen-"))
                .containsExactlyInAnyOrder("unseen-cracks", "unseen-horizontal-crack", "unseen-footing");
        assertThat(Checked.findings(Jobs.job())).extracting(Finding::id).noneMatch(id -> id.startsWith("unseen-"));
    }

    /** 40 ft of wall want 40 ft of ground graded away from them (IRC R401.3). */
    @ParameterizedTest(name = "{0} ft graded: short {1}")
    @CsvSource({"40, false", "39.9, true", "0, true"})
    void gradeIsAsLongAsTheWalls(double graded, boolean described) {
        Job j = Jobs.job();
        Area none = Area.ofSquareFeet(0);
        Restoration less = new Restoration(Length.ofFeet(graded), none, Length.ofInches(4), none, none, none, 0);
        Job job = new Job(
                j.head(),
                j.customer(),
                j.site(),
                j.survey(),
                new Work(j.walls(), j.corners(), j.water(), less, j.protection(), j.schedule()),
                j.pricing(),
                j.contractTerms(),
                j.acceptedStops(),
                j.agreement(),
                j.notes());
        List<Finding> found = found(job, "grade-short");
        assertThat(found)
                .hasSize(described ? 1 : 0)
                .allSatisfy(f -> assertThat(f.values()).containsEntry("walls", "40"));
    }

    /** Inspections, clearance and lifts of fill come with a wall, not without one. */
    @Test
    void noWallNoHolds() {
        Job none = withoutWalls();
        for (String id : List.of("inspection-holds", "siding-clearance", "backfill-lifts", "machine-back")) {
            assertThat(found(Jobs.job(), id)).as(id).hasSize(1);
            assertThat(found(none, id)).as(id).isEmpty();
        }
    }

    /** Footing of 6 in beside 5 ft of wall: 5 ft 6 in of trench, its foot 2.5 ft out. */
    private static Job besideSixInches(LimitKind kind, double distance, Double trunk) {
        Wall w = Jobs.wall();
        Wall six = new Wall(
                w.label(),
                w.where(),
                w.place(),
                w.depth(),
                new Footing(Length.ofInches(6), Length.ofInches(6)),
                w.surface(),
                w.openings(),
                w.windowWells(),
                w.digging());
        SiteLimit limit = new SiteLimit(
                kind, "A", Length.ofFeet(distance), Optional.ofNullable(trunk).map(Length::ofInches), "a note");
        return Jobs.job(Jobs.with(Jobs.site(), limit), Jobs.water(), six);
    }

    /** At 8 ft the neighbor's footing lies just as far from the trench as that is deep: 1 to 1 keeps it in place. */
    @ParameterizedTest(name = "{0} at {1} ft: {2} {3}")
    @CsvSource({
        "NEIGHBOR_FOOTING, 7.99, footing-in-reach, true",
        "NEIGHBOR_FOOTING, 8,    footing-in-reach, false",
        "PROPERTY_LINE,    4,    footing-in-reach, false",
        "PROPERTY_LINE,    2.49, no-room-at-all,   true",
        "PROPERTY_LINE,    2.5,  no-room-at-all,   false",
        "WALK,             2.49, no-room-at-all,   true",
        "TREE,             2.49, no-room-at-all,   false",
        "UTILITY,          2.49, no-room-at-all,   false",
        "UTILITY,          4,    hand-dig-zone,    true",
        "TREE,             4,    hand-dig-zone,    false",
        "UTILITY,          7.99, no-room-utility,  true",
        "UTILITY,          8,    no-room-utility,  false",
        "UTILITY,          4,    no-room,          false",
        "UTILITY,          4,    slope-marks-unwritten, false",
        "TREE,             31,   slope-marks-unwritten, true",
        "PROPERTY_LINE,    8,    no-room,          false",
        "PROPERTY_LINE,    7.99, no-room,          true",
        "PROPERTY_LINE,    9.99, grade-past-lot-line, true",
        "PROPERTY_LINE,    10,   grade-past-lot-line, false",
        "WALK,             4,    grade-past-lot-line, false",
        "NEIGHBOR_FOOTING, 7.99, neighbor-footing-unmeasured, false",
        "NEIGHBOR_FOOTING, 8.01, neighbor-footing-unmeasured, true",
        "PROPERTY_LINE,    8.01, neighbor-footing-unmeasured, false",
        "UTILITY,          4,    roots,            false"
    })
    void roomBesideTheTrench(LimitKind kind, double distance, String id, boolean described) {
        assertThat(found(besideSixInches(kind, distance, null), id)).hasSize(described ? 1 : 0);
    }

    /** City of Edina MN (W-35): 10 in of trunk has 15 ft of roots. The trench's edge lies 8 ft out. */
    @ParameterizedTest(name = "10 in trunk at {0} ft: roots {1}")
    @CsvSource({"22.99, true", "23.01, false"})
    void rootsOfATree(double distance, boolean described) {
        List<Finding> found = found(besideSixInches(LimitKind.TREE, distance, 10.0), "roots");
        assertThat(found)
                .hasSize(described ? 1 : 0)
                .allSatisfy(f -> assertThat(f.values())
                        .containsEntry("trunk", "10 in")
                        .containsEntry("edge", "8 ft")
                        .containsEntry("zone", "10 to 15 ft"));
    }

    /** A cut nearer than six times its diameter takes what holds a tree up: 10 ft for 20 in, edge 8 ft. */
    @ParameterizedTest(name = "{0} in trunk at {1} ft: a hold {2}")
    @CsvSource({"10, 5, true", "20, 17.99, true", "20, 18.01, false", "10, 13.01, false"})
    void aTreeAtTheCutHoldsTheDig(double trunk, double distance, boolean expected) {
        List<Finding> found = found(besideSixInches(LimitKind.TREE, distance, trunk), "tree-at-cut");

        assertThat(found)
                .hasSize(expected ? 1 : 0)
                .allSatisfy(one -> assertThat(one.severity()).isEqualTo(Severity.MUST));
    }

    /** No room is a must where the trench has to be protected, and told where an upright bank may stand. */
    @Test
    void noRoomByDepth() {
        SiteLimit line = new SiteLimit(LimitKind.PROPERTY_LINE, "A", Length.ofFeet(4), Optional.empty(), "");
        Finding deep = found(Jobs.job(Jobs.with(Jobs.site(), line), Jobs.water(), Jobs.deep(5)), "no-room")
                .get(0);
        assertThat(deep.severity()).isEqualTo(Severity.MUST);
        assertThat(deep.values())
                .containsEntry("limit", "property line")
                .containsEntry("edge", "8 ft 2 in")
                .containsEntry("distance", "4 ft")
                .containsEntry("instead", "shielded");
        Finding shallow = found(Jobs.job(Jobs.with(Jobs.site(), line), Jobs.water(), Jobs.deep(3)), "no-room")
                .get(0);
        assertThat(shallow.severity()).isEqualTo(Severity.ADVISE);
        assertThat(shallow.values()).containsEntry("instead", "upright");
    }

    /** State one-call laws: what lies within the marks is dug by hand. */
    @Test
    void utilityNamesItsPlace() {
        assertThat(found(besideSixInches(LimitKind.UTILITY, 4, null), "hand-dig-zone")
                        .get(0)
                        .values())
                .containsEntry("distance", "4 ft")
                .containsEntry("note", "a note");
    }
}
