// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.job.OutletKind;
import spadework.job.Water;
import spadework.office.Bid;
import spadework.paperwork.Dossier;
import spadework.samples.Samples;
import spadework.schedule.CrewCalendar;

/** What the crew's sheet says of who goes in, what stops the work, and what is done on which day. */
class CrewSheetTest {
    private static final String SUMP = "poured-basement-with-sump";
    private static final String STONE = "stone-wall-engineer-first";

    @TempDir
    private Path root;

    static List<Path> papered() {
        return Samples.papered();
    }

    private static CrewSheet sheet(Dossier dossier) {
        CrewCalendar calendar = CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff());
        return CrewSheetPaper.of(dossier, calendar, dossier.job().issued());
    }

    private static CrewSheet sheet(String sample) {
        return sheet(Samples.bid(Path.of("sample-quotes", sample)).dossier());
    }

    /** The sheet of a sample whose file says something else in one place. */
    private CrewSheet sheet(String sample, String was, String is) throws IOException {
        for (String shared : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(Path.of("sample-quotes", shared), root.resolve(shared));
        }
        Path job = Files.createDirectory(root.resolve(sample)).resolve("job.json");
        String text = Files.readString(Path.of("sample-quotes", sample, "job.json"));
        assertThat(text).contains(was);
        Files.writeString(job, text.replace(was, is));
        return sheet(((Bid) Samples.office().bid(job)).dossier());
    }

    private static String days(CrewSheet sheet) {
        return sheet.plan().stream().map(CrewSheet.Stretch::what).collect(Collectors.joining("; "));
    }

    @Test
    void everyTrenchOfADayIsJudgedByItself() {
        CrewSheet sheet = sheet(SUMP);
        List<CrewSheet.Day> open =
                sheet.days().stream().filter(CrewSheet.Day::open).toList();
        assertThat(open.get(0).places()).extracting(DayPlace::label).containsExactly("A", "B", "C", "D");
        assertThat(open.get(open.size() - 1).places())
                .extracting(DayPlace::label)
                .containsExactly("A", "B", "C", "D", "R1", "D1", "S1 sump pit", "S1 discharge pipe")
                .doesNotHaveDuplicates();
        assertThat(sheet.say().get("day-sheet-rule"))
                .contains("each trench and pit for itself", "tick \"stay out\"", "No tick means stay out");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void onlyDaysWithAnOpenTrenchHavePlacesAndTheyHaveAllWalls(Path sample) {
        Dossier dossier = Samples.bid(sample).dossier();
        assertThat(sheet(dossier).days()).isNotEmpty().allSatisfy(day -> {
            List<String> walls =
                    dossier.job().walls().stream().map(wall -> wall.label()).toList();
            if (day.open()) {
                assertThat(day.places()).extracting(DayPlace::label).containsAll(walls);
            } else {
                assertThat(day.places()).isEmpty();
            }
        });
    }

    @Test
    void pitBelowTheFootingWaitsForAnEngineersNameAndTick() {
        CrewSheet sheet = sheet(SUMP);
        assertThat(sheet.stops()).first().satisfies(stop -> {
            assertThat(stop.says())
                    .startsWith("STOP at the footing.")
                    .contains("Pit S1 goes 9 ft 7½ in deep, 2 ft 11½ in below", "lies 10 ft from it");
            assertThat(stop.blanks()).containsExactly("Engineer", "Day");
            assertThat(stop.ticks()).containsExactly("looked, and it may go deeper");
        });
        assertThat(sheet.say().get("limits")).contains("Beside a wall, never dig below the bottom of the footing.");
    }

    @Test
    void whereAnEngineerComesFirstTheLetterStopsTheWorkAndNoAcceptanceReadsAsLeave() {
        CrewSheet sheet = sheet(STONE);
        assertThat(sheet.stops()).first().satisfies(stop -> {
            assertThat(stop.says())
                    .startsWith("STOP. No letter, no digging at A")
                    .contains("of stone", "the letter rules")
                    .doesNotContain("Odalys", "ccepted");
            assertThat(stop.blanks()).containsExactly("Letter of", "Written by", "What it asks for");
            assertThat(stop.ticks()).containsExactly("letter on site", "read by the crew leader");
        });
        assertThat(sheet.plan().get(0).days()).isEqualTo("Before");
        assertThat(sheet.plan().get(0).what()).contains("No letter, no digging");
        assertThat(sheet(SUMP).plan().get(0).days()).isEqualTo("1");
    }

    @Test
    void engineersOwnLetterIsNamedAndStillHasToBeOnSite() throws IOException {
        CrewSheet sheet = sheet(STONE, "Odalys Fennimarsh, owner", "Ines Marlow, PE");
        assertThat(sheet.stops()).first().satisfies(stop -> {
            assertThat(stop.says()).contains("STOP. No letter, no digging", "Ines Marlow, PE wrote on September 14");
            assertThat(stop.ticks()).contains("letter on site");
        });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void aDayNamesOnlyWhatTheJobHas(Path sample) {
        Dossier dossier = Samples.bid(sample).dossier();
        Water water = dossier.job().water();
        String days = days(sheet(dossier)).toLowerCase(Locale.ROOT);
        boolean sump = water.outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP);
        assertThat(days.contains("lay main")).isEqualTo(!water.mains().isEmpty());
        assertThat(days.contains("roof line")).isEqualTo(!water.roofLines().isEmpty());
        assertThat(days.contains("pump")).isEqualTo(sump);
        assertThat(days.contains("footing drain")).isEqualTo(!water.drains().isEmpty());
    }

    @Test
    void sumpIsDugSetAndConnectedOnDaysOfItsOwn() {
        assertThat(days(sheet(SUMP)))
                .contains("dig the pit of S1", "lay the discharge pipe of S1")
                .contains("a licensed electrician connects the pump");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            block-basement-to-swale    | 811, ticket DEMO-260806-0417 | false
            crawl-space-between-houses | 811. No ticket yet: do not dig before every mark is on the ground. | false
            poured-basement-with-sump  | 811, ticket DEMO-260819-0022 | true
            """)
    void firstPageHasWhoAnswersAndWhomToCall(String sample, String marks, boolean gas) {
        CrewSheet sheet = sheet(sample);
        assertThat(sheet.calls()).contains(new CrewCall("Utility marks", marks));
        assertThat(sheet.calls()).contains(new CrewCall("Crew leader", ""), new CrewCall("Competent person", ""));
        assertThat(sheet.calls()).contains(new CrewCall("Last day the ticket is valid", ""));
        assertThat(sheet.calls())
                .contains(new CrewCall("Office", "(614) 555-0142; Nell Tarrow, (614) 555-0143"))
                .anyMatch(call -> call.number()
                        .startsWith("911. We are at " + sheet.head().siteAddress()));
        assertThat(sheet.calls().stream().anyMatch(call -> call.who().startsWith("Gas company")))
                .isEqualTo(gas);
        assertThat(sheet.say().get("utility").contains("1926.651(b)(3), (b)(4)"))
                .isEqualTo(gas);
        assertThat(sheet.say().get("danger"))
                .contains("smell gas", "everybody out at once", "uphill and upwind", "call 911");
    }

    @Test
    void lastDayOfTheTicketStandsThereOnceTheJobSaysIt() throws IOException {
        String ticket = "\"locateTicket\": \"DEMO-260819-0022\"";
        assertThat(sheet(SUMP, ticket, ticket + ", \"locateUntil\": \"2026-09-25\"")
                        .calls())
                .contains(new CrewCall("Last day the ticket is valid", "September 25, 2026"));
    }

    /** What the rules found stops a crew in its own language, whatever the office and the homeowner read. */
    @Test
    void findingsThatStopTheWorkAreInTheCrewsLanguage() throws IOException {
        String company = Files.readString(Path.of("sample-quotes/company.json"));
        for (String shared : List.of("price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(Path.of("sample-quotes", shared), root.resolve(shared));
        }
        Files.writeString(root.resolve("company.json"), company.replaceFirst("\\{", "{\"crewLanguage\": \"es\","));
        Path job = Files.createDirectory(root.resolve("job")).resolve("job.json");
        Files.copy(Path.of("sample-quotes/refused-type-a-and-no-fall/job.json"), job);
        Bid bid = (Bid) Samples.office().bid(job);
        CrewSheet spanish = sheet(Samples.office().forCrew(bid));
        CrewSheet english = sheet(bid.dossier());
        assertThat(english.stops())
                .as("the same job in the words of the office")
                .hasSameSizeAs(spanish.stops())
                .hasSizeGreaterThan(2);
        assertThat(spanish.stops())
                .filteredOn(stop -> stop.blanks().isEmpty())
                .hasSize(spanish.stops().size() - 1)
                .extracting(CrewStop::says)
                .allSatisfy(says -> assertThat(says).startsWith("Antes de comenzar el trabajo:"));
        assertThat(spanish.stops())
                .extracting(CrewStop::says)
                .allSatisfy(
                        says -> assertThat(says).doesNotContainPattern("(?i)\\b(the|is|of|job|soil|drain|says)\\b"));
        assertThat(spanish.stops()).extracting(CrewStop::says).anyMatch(says -> says.contains("nunca es tipo A"));
    }

    @Test
    void lineThatIsNotSaidToBeGasHasAnOwnerToCall() throws IOException {
        assertThat(sheet(SUMP, "gas service, marked", "marked in blue").calls())
                .contains(new CrewCall("Owner of the marked line", ""))
                .noneMatch(call -> call.who().startsWith("Gas"));
    }

    /** By hand: 6 in of footing, 2 ft of bottom, 6 ft 2 in of depth at 1 and at 1½; 7 ft at the poured basement. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            block-basement-to-swale    | A, B    | 8 ft 8 in | 11 ft 9 in
            poured-basement-with-sump  | A, B, D | 9 ft 6 in | 13 ft
            poured-basement-with-sump  | C       | shield in any soil | shield in any soil
            stone-wall-engineer-first  | A       | 7 ft 4 in | no room for 9 ft 10 in (walk 9 ft from the wall): shield
            """)
    void edgeOfTheBankIsGivenForTheSoilThatIsFound(String sample, String walls, String b, String c) {
        assertThat(sheet(sample).edges()).contains(new BankEdge(walls, b, c));
    }

    /** In Type C the slope at wall A reaches 13 ft. */
    @ParameterizedTest(name = "line {0} from wall A: {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            12 ft 11 in | A, C    | shield in any soil
            13 ft       | A, B, D | 9 ft 6 in
            """)
    void bankThatWouldReachPastAMarkedLineGetsAShield(String distance, String walls, String b) throws IOException {
        CrewSheet sheet = sheet(
                SUMP, "\"wall\": \"C\", \"distance\": \"4 ft\"", "\"wall\": \"A\", \"distance\": \"" + distance + "\"");
        assertThat(sheet.edges())
                .filteredOn(edge -> edge.walls().equals(walls))
                .extracting(BankEdge::b)
                .containsExactly(b);
    }

    @Test
    void whatNobodyMeasuredHasAPlaceBeforeTheDig() {
        assertThat(sheet("crawl-space-between-houses").stops())
                .filteredOn(stop -> stop.says().startsWith("Look before the dig"))
                .singleElement()
                .satisfies(stop -> assertThat(stop.blanks())
                        .contains("A, Bow, inches:", "B, Bow, inches:", "A, Tied to the floor above, yes or no:"));
        assertThat(sheet(SUMP).stops()).noneMatch(stop -> stop.says().startsWith("Look before the dig"));
    }

    @Test
    void everyTrenchNearAMarkedLineSaysSo() throws IOException {
        CrewSheet sheet = sheet(SUMP);
        assertThat(sheet.trenches())
                .filteredOn(dug -> dug.beside().stream().anyMatch(line -> line.startsWith("near the marked line 4 ft")))
                .extracting(CrewTrench::label)
                .contains("B", "D", "R1", "D1", "S1")
                .doesNotContain("A");
        assertThat(sheet.say().get("utility")).contains("wall C; the trenches of B, D, R1, D1, and S1");
    }

    @Test
    void peopleComeInOverABridgeThatSomebodyLookedAt() {
        assertThat(sheet(SUMP).stops()).last().satisfies(stop -> {
            assertThat(stop.says()).contains("a bridge with rails over the trench: front door at wall C.");
            assertThat(stop.blanks()).containsExactly("Looked at by:");
            assertThat(stop.ticks()).containsExactly("the bridge stands, with rails on both sides");
        });
        assertThat(sheet(STONE).stops()).last().satisfies(stop -> {
            assertThat(stop.says()).startsWith("Ask which door stays in use");
            assertThat(stop.blanks()).containsExactly("Door in use:");
        });
    }

    @Test
    void aHouseThatIsShutAllRoundIsNotDugBeforeTheWayInIsSettled() throws IOException {
        CrewSheet sheet =
                sheet(SUMP, ",\n      \"wayIn\": { \"by\": \"bridge\", \"door\": \"front door at wall C\" }", "");
        assertThat(sheet.stops()).last().satisfies(stop -> {
            assertThat(stop.says()).startsWith("Do not dig before the way in is settled");
            assertThat(stop.blanks()).containsExactly("Door in use:");
        });
    }

    @Test
    void slopesOfAllSoilsAreSaidAndTypeAIsNoneBesideAHouse() {
        assertThat(sheet(STONE).say().get("edges-are"))
                .contains("0.75 ft in Type A, 1 ft in Type B, and 1.5 ft in Type C or in soil that nobody classed")
                .contains("Type A counts as B", "29 CFR 1926 Subpart P App. B");
        assertThat(sheet(STONE).say().get("water")).contains("surface water away from the edge", "1926.651(h)");
    }

    @Test
    void uprightTrenchStopsWhereTheLawAsksForABank() {
        assertThat(sheet(STONE).trenches())
                .filteredOn(dug -> dug.label().equals("M1"))
                .singleElement()
                .satisfies(dug -> assertThat(dug.bank()).contains("at 5 ft deep stop and slope it"));
    }

    @Test
    void downspoutsHaveALineForTheirPlace() {
        assertThat(sheet(SUMP).trenches())
                .filteredOn(dug -> dug.label().equals("R1"))
                .singleElement()
                .satisfies(dug -> assertThat(dug.beside())
                        .filteredOn(line -> line.startsWith("DS"))
                        .hasSize(4)
                        .allMatch(line -> line.matches("DS\\d at _+")));
    }
}
