// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.finding.Severity;
import spadework.job.Condition;
import spadework.job.Downspout;
import spadework.job.Finish;
import spadework.job.FinishSystem;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.LimitKind;
import spadework.job.OutletKind;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.SiteLimit;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Surface;
import spadework.job.Texture;
import spadework.job.Wall;
import spadework.job.WallKind;
import spadework.job.Water;
import spadework.measure.Area;
import spadework.measure.FilmThickness;
import spadework.measure.Length;
import spadework.press.template.Templates;
import spadework.pricebook.Books;

/** Each rule on both sides of its threshold. */
class ChecksTest {
    private static final Phrases PHRASES = new Phrases(Templates.bundled().words("words/findings.properties"));

    private static List<Finding> check(Job job) {
        return Checks.of(new Facts(job, Books.standard()));
    }

    private static List<String> ids(Job job) {
        return check(job).stream().map(Finding::id).toList();
    }

    /** The depth is to the bottom of the footing: 8 in below the depth that a wall states. */
    @ParameterizedTest(name = "{0} ft deep, {1}: {2} {3}")
    @CsvSource(textBlock = """
            # trench depth, bank, expected, yes or no, rule
            4.99, UPRIGHT,  upright-shallow,  true,  under 5 ft may stand if nothing shows (1926.652(a)(1))
            5.00, UPRIGHT,  upright-too-deep, true,  from 5 ft protected
            4.99, UPRIGHT,  upright-too-deep, false, under 5 ft
            9.00, SLOPED,   upright-too-deep, false, sloped
            9.00, SLOPED,   slope-back,       true,  Table B-1
            9.00, SHIELDED, shield,           true,  1926.652(g)
            3.99, SLOPED,   ladder,           false, ladder from 4 ft (1926.651(c)(2))
            4.00, SLOPED,   ladder,           true,  ladder from 4 ft
            4.00, SLOPED,   air-test,         false, air deeper than 4 ft (1926.651(g)(1))
            4.01, SLOPED,   air-test,         true,  air deeper than 4 ft
            20.0, SLOPED,   trench-over-20,   false, to 20 ft (1926.652(b))
            20.1, SLOPED,   trench-over-20,   true,  engineer over 20 ft
            """)
    void trenchDepth(double depth, Protection protection, String id, boolean expected, String rule) {
        Wall wall = Jobs.protectedBy(Jobs.deep(depth - 8.0 / 12), protection);
        assertThat(ids(Jobs.job(wall)).contains(id)).as(rule).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0}, water {1}: {2} {3}")
    @CsvSource(textBlock = """
            A,           NONE,    soil-type-a,        true,  never Type A where it was dug before (App. A (b))
            B,           NONE,    soil-type-a,        false, Type B at best
            B,           FREE,    soil-seeps,         true,  free water makes Type C
            B,           DAMP,    soil-seeps,         false, damp does not
            C,           FREE,    soil-seeps,         false, already Type C
            NOT_CLASSED, NONE,    soil-not-classed,   true,  unknown is not safe
            B,           NONE,    soil-not-classed,   false, classed
            B,           UNKNOWN, seepage-unknown,    true,  unknown is not safe
            B,           NONE,    seepage-unknown,    false, looked
            B,           NONE,    water-in-trench,    false, dry
            B,           DAMP,    water-in-trench,    true,  1926.651(h)
            STABLE_ROCK, NONE,    soil-rock-beside-footing, true, the fill beside a footing is not rock
            """)
    void soil(SoilType type, Seepage seepage, String id, boolean expected, String rule) {
        Job job = Jobs.job(Jobs.with(Jobs.site(), new Soil(Texture.LOAM, seepage, type)), Jobs.water(), Jobs.wall());
        assertThat(ids(job).contains(id)).as(rule).isEqualTo(expected);
    }

    static Stream<Arguments> walls() {
        Length none = Length.ZERO;
        Optional<Boolean> tied = Optional.of(true);
        return Stream.of(
                Arguments.of("bow of 1 in", "engineer-bow", false, condition(none, false, false, "1", false, tied)),
                Arguments.of("bow over 1 in", "engineer-bow", true, condition(none, false, false, "1.1", false, tied)),
                Arguments.of(
                        "bow not measured", "bow-unmeasured", true, condition(none, false, false, "", false, tied)),
                Arguments.of("bow measured", "bow-unmeasured", false, condition(none, false, false, "0", false, tied)),
                Arguments.of("crack along", "engineer-crack", true, condition(none, true, false, "0", false, tied)),
                Arguments.of(
                        "no crack along", "engineer-crack", false, condition(none, false, false, "0", false, tied)),
                Arguments.of("moved", "engineer-displaced", true, condition(none, false, true, "0", false, tied)),
                Arguments.of("undermined", "engineer-undermined", true, condition(none, false, false, "0", true, tied)),
                Arguments.of(
                        "not undermined",
                        "engineer-undermined",
                        false,
                        condition(none, false, false, "0", false, tied)),
                Arguments.of(
                        "untied",
                        "engineer-untied",
                        true,
                        condition(none, false, false, "0", false, Optional.of(false))),
                Arguments.of("tied", "engineer-untied", false, condition(none, false, false, "0", false, tied)),
                Arguments.of(
                        "tie not seen",
                        "tie-unseen",
                        true,
                        condition(none, false, false, "0", false, Optional.empty())),
                Arguments.of(
                        "tie not seen, 5 ft",
                        "backfill-braced",
                        true,
                        condition(none, false, false, "0", false, Optional.empty())),
                Arguments.of("tied, 5 ft", "backfill-braced", false, condition(none, false, false, "0", false, tied)));
    }

    @ParameterizedTest(name = "{0}: {1} {2}")
    @MethodSource("walls")
    void structureFirst(String shown, String id, boolean expected, Condition condition) {
        assertThat(ids(Jobs.job(Jobs.with(Jobs.wall(), condition))).contains(id))
                .isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0} ft of soil: {1} {2}")
    @CsvSource({"7.00, engineer-unbalanced, false", "7.05, engineer-unbalanced, true"})
    void unbalancedFill(double depth, String id, boolean expected) {
        assertThat(ids(Jobs.job(Jobs.deep(depth))).contains(id)).isEqualTo(expected);
    }

    @Test
    void stoneWallWantsAnEngineer() {
        assertThat(ids(Jobs.job(Jobs.with(Jobs.wall(), WallKind.STONE)))).contains("engineer-stone");
        assertThat(ids(Jobs.job())).doesNotContain("engineer-stone");
    }

    @ParameterizedTest(name = "wall untied, {0} ft of soil: braced before backfill {1} (IRC R404.1.7)")
    @CsvSource({"3.99, false", "4.00, true"})
    void backfillBraced(double depth, boolean expected) {
        Condition unseen = condition(Length.ZERO, false, false, "0", false, Optional.empty());
        assertThat(ids(Jobs.job(Jobs.with(Jobs.deep(depth), unseen))).contains("backfill-braced"))
                .isEqualTo(expected);
    }

    /** 5 ft to the footing's top, 8 in of footing, slope 1: the edge lies 0.5 + 2 + 5.667 = 8.17 ft out. */
    @ParameterizedTest(name = "property line at {0} ft: room {1}")
    @CsvSource({"8.1, false", "8.2, true"})
    void slopeFitsTheRoom(double distance, boolean fits) {
        SiteLimit line = new SiteLimit(LimitKind.PROPERTY_LINE, "A", Length.ofFeet(distance), Optional.empty(), "");
        Job job = Jobs.job(Jobs.with(Jobs.site(), line), Jobs.water(), Jobs.wall());
        assertThat(ids(job).contains("no-room")).isEqualTo(!fits);
        assertThat(ids(job).contains("shield"))
                .as("5 ft and deeper: a shield instead")
                .isEqualTo(!fits);
        assertThat(ids(job).contains("slope-back")).isEqualTo(fits);
    }

    /** Under 5 ft an upright bank takes the slope's place, which the competent person has to allow. */
    @Test
    void shallowTrenchWithoutRoomStandsUpright() {
        SiteLimit line = new SiteLimit(LimitKind.WALK, "A", Length.ofFeet(4), Optional.empty(), "");
        Job job = Jobs.job(Jobs.with(Jobs.site(), line), Jobs.water(), Jobs.deep(3));
        assertThat(ids(job)).contains("no-room", "upright-shallow").doesNotContain("shield", "slope-back");
    }

    /** Projection 0.5 ft and bottom 2 ft: an upright trench reaches 2.5 ft. */
    @ParameterizedTest(name = "property line at {0} ft: stop {1}")
    @CsvSource({"2.4, true", "2.6, false"})
    void evenAnUprightTrenchNeedsRoom(double distance, boolean stop) {
        SiteLimit line = new SiteLimit(LimitKind.PROPERTY_LINE, "A", Length.ofFeet(distance), Optional.empty(), "");
        Job job = Jobs.job(Jobs.with(Jobs.site(), line), Jobs.water(), Jobs.wall());
        assertThat(ids(job).contains("no-room-at-all")).isEqualTo(stop);
    }

    /** The trench is 5.667 ft deep and its foot lies 2.5 ft out: the neighbor's footing is in reach under 8.167 ft. */
    @ParameterizedTest(name = "neighbour's footing at {0} ft: stop {1}")
    @CsvSource({"8.1, true", "8.2, false"})
    void neighborsFootingInsideOneToOne(double distance, boolean stop) {
        SiteLimit near = new SiteLimit(LimitKind.NEIGHBOR_FOOTING, "A", Length.ofFeet(distance), Optional.empty(), "");
        Job job = Jobs.job(Jobs.with(Jobs.site(), near), Jobs.water(), Jobs.wall());
        assertThat(ids(job).contains("footing-in-reach")).isEqualTo(stop);
    }

    /**
     * The stone stands 14 in high, 6 in over the footing's top; 6 in of soil over it need 12 in to the footing's top.
     */
    @ParameterizedTest(name = "footing top {0} in deep: too shallow {1}")
    @CsvSource({"11.9, true", "12, false"})
    void stoneLeavesRoomForSoil(double inches, boolean expected) {
        assertThat(ids(Jobs.job(Jobs.deep(inches / 12))).contains("stone-shallow"))
                .isEqualTo(expected);
    }

    @Test
    void wallWithoutDrainIsTold() {
        Water none = new Water(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        assertThat(ids(Jobs.job(Jobs.site(), none, Jobs.wall()))).contains("wall-undrained");
        assertThat(ids(Jobs.job())).doesNotContain("wall-undrained");
    }

    /** W-35, City of Edina MN: a trunk of 10 in has a root zone of 15 ft. The trench's edge lies 8.17 ft out. */
    @ParameterizedTest(name = "10 in trunk at {0} ft: roots {1}")
    @CsvSource({"23.1, true", "23.2, false"})
    void rootZone(double distance, boolean expected) {
        SiteLimit tree =
                new SiteLimit(LimitKind.TREE, "A", Length.ofFeet(distance), Optional.of(Length.ofInches(10)), "oak");
        Job job = Jobs.job(Jobs.with(Jobs.site(), tree), Jobs.water(), Jobs.wall());
        assertThat(ids(job).contains("roots")).isEqualTo(expected);
    }

    @Test
    void unmeasuredTrunkIsAFinding() {
        SiteLimit tree = new SiteLimit(LimitKind.TREE, "A", Length.ofFeet(12), Optional.empty(), "");
        assertThat(ids(Jobs.job(Jobs.with(Jobs.site(), tree), Jobs.water(), Jobs.wall())))
                .contains("trunk-unmeasured");
    }

    @ParameterizedTest(name = "built {0}, {1}: lead {2}")
    @CsvSource(textBlock = """
            1977, PAINTED, true
            1978, PAINTED, false
            1977, BARE,    false
            1977, UNKNOWN, true
            ,     COATED,  true
            """)
    void leadRule(Integer year, Surface surface, boolean expected) {
        Condition c = Jobs.sound();
        Condition condition =
                new Condition(surface, c.cracks(), false, false, c.bow(), false, c.tiedToFloor(), Set.of());
        Job job = Jobs.job(
                Jobs.builtIn(Jobs.site(), Optional.ofNullable(year)), Jobs.water(), Jobs.with(Jobs.wall(), condition));
        assertThat(ids(job).contains("lead-paint")).isEqualTo(expected);
        assertThat(ids(job).contains("year-unknown")).isEqualTo(year == null);
    }

    /** 1/8 in a foot over 40 ft is 0.4167 ft (IPC 704.1). */
    @ParameterizedTest(name = "main of 40 ft falls {0} ft: {1}")
    @CsvSource(textBlock = """
            0.80,  ''
            0.417, ''
            0.41,  too-flat
            0.00,  back-pitch
            -0.10, back-pitch
            """)
    void mainFalls(double fall, String expected) {
        Water w = Jobs.water();
        Water water = new Water(
                w.drains(), List.of(Jobs.main(40, 92, 92 - fall)), List.of(), List.of(), w.outlets(), List.of());
        List<String> found = ids(Jobs.job(Jobs.site(), water, Jobs.wall()));
        assertThat(found.contains("too-flat")).isEqualTo(expected.equals("too-flat"));
        assertThat(found.contains("back-pitch")).isEqualTo(expected.equals("back-pitch"));
    }

    @ParameterizedTest(name = "drain from {0} to {1}, floor at 93: {2}")
    @CsvSource(textBlock = """
            92.5, 92.3, ''
            92.3, 92.5, back-pitch
            93.0, 92.8, ''
            93.1, 92.8, drain-above-floor
            """)
    void footingDrainLiesLowAndFalls(double start, double end, String expected) {
        Water w = Jobs.water();
        Water water =
                new Water(List.of(Jobs.drain(start, end)), w.mains(), List.of(), List.of(), w.outlets(), List.of());
        List<String> found = ids(Jobs.job(Jobs.site(), water, Jobs.wall()));
        assertThat(found.contains("back-pitch")).isEqualTo(expected.equals("back-pitch"));
        assertThat(found.contains("drain-above-floor")).isEqualTo(expected.equals("drain-above-floor"));
    }

    @Test
    void roofWaterInThePerforatedRunIsAStop() {
        Water w = Jobs.water();
        Downspout spout = new Downspout("DS1", Area.ofSquareFeet(500), "D1");
        Water water = new Water(w.drains(), w.mains(), List.of(), List.of(spout), w.outlets(), List.of());
        assertThat(check(Jobs.job(Jobs.site(), water, Jobs.wall())))
                .filteredOn(finding -> finding.id().equals("roof-into-drain"))
                .extracting(Finding::severity)
                .containsExactly(Severity.STOP);
    }

    @ParameterizedTest(name = "{0}, permission {1}, {2} ft from the lot line: {3} {4}")
    @CsvSource(textBlock = """
            APPROVED_STORM, ,        20,  storm-unpermitted,      true
            APPROVED_STORM, letter,  20,  storm-unpermitted,      false
            DAYLIGHT,       ,        4.9, outlet-near-line,       true
            DAYLIGHT,       ,        5,   outlet-near-line,       false
            DAYLIGHT,       ,        ,    outlet-line-unmeasured, true
            DAYLIGHT,       ,        5,   outlet-line-unmeasured, false
            SUMP,           ,        9,   sump,                   true
            DAYLIGHT,       ,        9,   sump,                   false
            """)
    void outlets(OutletKind kind, String permission, Double line, String id, boolean expected) {
        Water w = Jobs.water();
        Water water = new Water(
                w.drains(),
                w.mains(),
                List.of(),
                List.of(),
                List.of(Jobs.outlet(
                        kind,
                        Optional.ofNullable(permission),
                        Optional.ofNullable(line).map(Length::ofFeet))),
                List.of());
        assertThat(ids(Jobs.job(Jobs.site(), water, Jobs.wall())).contains(id)).isEqualTo(expected);
    }

    /** IRC R406.2: 60 mil of liquid synthetic rubber is waterproofing, thinner is dampproofing (R406.1). */
    @ParameterizedTest(name = "{0} mil of rubber: dampproofing {1}")
    @CsvSource({"59, true", "60, false", "61, false"})
    void theWordFollowsTheFilm(double mils, boolean dampproofing) {
        Finish finish = new Finish(FinishSystem.COATING, Optional.empty(), Optional.of(new FilmThickness(mils)));
        assertThat(ids(Jobs.job(Jobs.with(Jobs.wall(), finish))).contains("film-dampproofing"))
                .isEqualTo(dampproofing);
    }

    @Test
    void missingTicketIsAMust() {
        assertThat(ids(Jobs.job(Jobs.withoutTicket(Jobs.site()), Jobs.water(), Jobs.wall())))
                .contains("locate-missing")
                .doesNotContain("locate-keep");
        assertThat(ids(Jobs.job())).contains("locate-keep").doesNotContain("locate-missing");
    }

    @Test
    void everyFindingHasWordsAndCitation() {
        for (Job job : List.of(Jobs.job(), Jobs.job(Jobs.with(Jobs.deep(9), WallKind.STONE)))) {
            for (Finding finding : check(job)) {
                assertThat(PHRASES.what(finding)).isNotBlank();
                assertThat(PHRASES.action(finding)).isNotBlank();
                assertThat(finding.citation()).isNotBlank();
            }
        }
    }

    @Test
    void gravestFirst() {
        assertThat(check(Jobs.job(Jobs.with(Jobs.deep(9), WallKind.STONE))))
                .extracting(Finding::severity)
                .isSorted();
    }

    private static Condition condition(
            Length cracks, boolean along, boolean moved, String bowInches, boolean undermined, Optional<Boolean> tied) {
        Optional<Length> bow =
                bowInches.isEmpty() ? Optional.empty() : Optional.of(Length.ofInches(Double.parseDouble(bowInches)));
        return new Condition(Surface.BARE, cracks, along, moved, bow, undermined, tied, Set.of());
    }
}
