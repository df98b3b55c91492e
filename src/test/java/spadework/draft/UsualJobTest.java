// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import spadework.draft.Assumption.Kind;

/** What a usual job writes, what it only assumes, and what follows from the walls. */
class UsualJobTest {
    private static final UsualJob USUAL = new UsualJob("block", read("""
                    {"walls": [{"label": "A", "kind": "block", "strip": ["STRIP-DAMP"]}],
                     "water": {"drains": [{"label": "D1", "teeAt": "end", "into": "M1"}],
                               "mains": [{"label": "M1", "into": "O1"}], "outlets": [{"label": "O1", "kind": "daylight"}]}}
                    """), read("""
                    {"customer": {"names": ["not written yet"]}, "site": {"soil": {"texture": "clay"}},
                     "walls": [{"condition": {"displaced": false, "cracks": "10 ft"}}],
                     "water": {"mains": [{"length": "60 ft"}]}}
                    """));

    private static Draft read(String text) {
        return Draft.read(text).orElseThrow();
    }

    private static Draft job(String text) {
        return USUAL.onto(read(text));
    }

    @Test
    void newJobHasWhatTheCompanyDecidesAndNothingThatTheHouseDecides() {
        Draft begun = job("{\"issued\": \"2026-08-10\"}");
        assertThat(begun.shown("/walls/0/kind")).isEqualTo("block");
        assertThat(begun.shown("/water/mains/0/into")).isEqualTo("O1");
        assertThat(begun.at("/walls/0/condition")).isEmpty();
        assertThat(begun.at("/site")).isEmpty();
    }

    @Test
    void choosingAnotherKindKeepsWhatWasMeasuredAndNamed() {
        Draft chosen = job(
                "{\"walls\": [{\"label\": \"W1\", \"length\": \"42 ft\", \"kind\": \"stone\"}, {\"label\": \"W2\"}]}");
        assertThat(chosen.shown("/walls/0/length")).isEqualTo("42 ft");
        assertThat(chosen.shown("/walls/0/label")).isEqualTo("W1");
        assertThat(chosen.shown("/walls/0/kind")).isEqualTo("block");
        assertThat(chosen.shown("/walls/1/kind")).isEqualTo("block");
    }

    @Test
    void assumedIsOnlyWhatNobodyWrote() {
        Draft begun = job("{\"site\": {\"soil\": {\"texture\": \"sand\"}}}");
        Assumptions assumed = USUAL.in(begun);
        assertThat(assumed.filled().shown("/site/soil/texture")).isEqualTo("sand");
        assertThat(assumed.at("/site/soil/texture")).isEmpty();
        assertThat(assumed.filled().shown("/walls/0/condition/displaced")).isEqualTo("false");
        assertThat(begun.at("/walls/0/condition"))
                .as("the job itself stays as it is")
                .isEmpty();
    }

    @Test
    void whatIsSeenAtTheHouseIsNeverDecidedAtTheDesk() {
        Draft begun = job("{\"issued\": \"2026-08-10\", \"walls\": [{\"label\": \"A\", \"length\": \"42 ft\"}]}");
        Assumptions assumed = USUAL.in(begun);
        assertThat(assumed.at("/walls/0/condition/displaced").map(Assumption::kind))
                .contains(Kind.SEEN);
        assertThat(assumed.at("/water/mains/0/length").map(Assumption::kind)).contains(Kind.SEEN);
        assertThat(assumed.at("/customer/names").map(Assumption::kind)).contains(Kind.UNWRITTEN);
        Draft decided = assumed.decided(begun);
        assertThat(decided.at("/walls/0/condition")).isEmpty();
        assertThat(decided.at("/customer")).isEmpty();
        assertThat(decided.at("/site/soil")).isEmpty();
        assertThat(decided.shown("/title")).isEqualTo("North wall");
        assertThat(decided.shown("/schedule/earliestStart")).as("a Monday").isEqualTo("2026-09-14");
    }

    @Test
    void wallsThatMeetAtACornerOfTheHouseAreJoinedAndTheDrainRunsAlongAll() {
        Draft begun = job("""
                {"site": {"house": {"eastWest": "42 ft", "northSouth": "28 ft"}},
                 "walls": [{"label": "A", "faces": "north", "from": "0 ft", "length": "42 ft"},
                           {"label": "B", "faces": "east", "from": "0 ft", "length": "26 ft"},
                           {"label": "C", "faces": "south", "from": "0 ft", "length": "10 ft"}]}
                """);
        Draft filled = USUAL.in(begun).filled();
        assertThat(filled.rows("/corners"))
                .as("B ends 2 ft short of the corner")
                .isEqualTo(1);
        assertThat(filled.shown("/corners/0/first")).isEqualTo("A end");
        assertThat(filled.shown("/corners/0/second")).isEqualTo("B start");
        assertThat(filled.shown("/water/drains/0/along")).isEqualTo("A, B, C");
        assertThat(filled.shown("/restoration/regrade")).isEqualTo("78 ft");
    }

    @Test
    void pipeTakesTheLevelsThatWereMeasuredAtItsEnds() {
        Draft begun = job("""
                {"water": {"drains": [{"label": "D1", "teeAt": "end", "into": "M1", "endInvert": "92.12 ft"}],
                           "mains": [{"label": "M1", "into": "O1"}], "outlets": [{"label": "O1", "level": "91.20 ft"}]}}
                """);
        Draft filled = USUAL.in(begun).filled();
        assertThat(filled.shown("/water/mains/0/startInvert")).isEqualTo("92.12 ft");
        assertThat(filled.shown("/water/mains/0/endInvert")).isEqualTo("91.20 ft");
    }

    @Test
    void keptJobHoldsDecisionsAndNoCustomer() {
        UsualJob kept = USUAL.of(read("""
                        {"customer": {"names": ["Ida Wrenfield"]}, "protection": ["Plywood"],
                         "walls": [{"label": "K", "length": "42 ft", "kind": "stone", "condition": {"cracks": "9 ft"}}]}
                        """), "Stone");
        assertThat(List.of(kept.written().shown("/walls/0/kind"), kept.written().shown("/walls/0/label")))
                .containsExactly("stone", "A");
        assertThat(kept.written().at("/customer")).isEmpty();
        assertThat(kept.written().at("/walls/0/length")).isEmpty();
        assertThat(kept.written().at("/walls/0/condition")).isEmpty();
        assertThat(kept.written().rows("/protection")).isEqualTo(1);
    }
}
