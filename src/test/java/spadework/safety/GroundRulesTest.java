// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.intake.Intake;
import spadework.intake.ReadJob;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Wall;
import spadework.job.Water;
import spadework.pricebook.Books;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.takeoff.HandItems;

/** Each threshold of what is known of the ground: just below it, at it, just above it. */
class GroundRulesTest {
    private static final Path JOBS = Path.of("src/test/resources/spadework/office/estimates");
    private static final ObjectMapper JSON = new ObjectMapper();

    private static ObjectNode file(String job) throws IOException {
        return (ObjectNode) JSON.readTree(JOBS.resolve(job).resolve("job.json").toFile());
    }

    private static Job job(ObjectNode file) throws IOException {
        Path beside = Path.of("sample-quotes", "block-basement-to-swale", "job.json");
        return ((ReadJob) new Intake().read(file.toString(), beside)).job();
    }

    private static List<Finding> found(ObjectNode file) throws IOException {
        return Checked.findings(job(file));
    }

    private static List<String> ids(ObjectNode file) throws IOException {
        return found(file).stream().map(Finding::id).toList();
    }

    private static Finding only(ObjectNode file, String id) throws IOException {
        List<Finding> found =
                found(file).stream().filter(one -> one.id().equals(id)).toList();
        assertThat(found).as(id).hasSize(1);
        return found.get(0);
    }

    private static String feet(double feet) {
        return String.format(Locale.ROOT, "%.4f ft", feet);
    }

    private static ObjectNode main(ObjectNode file) {
        return (ObjectNode) file.get("water").get("mains").get(0);
    }

    /** A main that is so deep all along by its levels, 2 in of bedding under its invert. */
    private static void dig(ObjectNode file, double depth) {
        String grade = String.format(Locale.ROOT, "%.4f in", (70 + depth) * 12 - 2);
        main(file)
                .put("startInvert", "70 ft")
                .put("endInvert", "70 ft")
                .put("startGrade", grade)
                .put("endGrade", grade);
    }

    private static ObjectNode digging(ObjectNode file, int wall) {
        return (ObjectNode) file.get("walls").get(wall).get("digging");
    }

    /** The main's levels make 3 ft on the average; more than 6 in off that, either way, somebody looks. */
    @ParameterizedTest(name = "typed {0} ft for 3 ft: told {1}")
    @CsvSource({"2.49, true", "2.5, false", "2.51, false", "3, false", "3.49, false", "3.5, false", "3.51, true"})
    void typedDepthAgainstLevels(double typed, boolean described) throws IOException {
        ObjectNode file = file("main-3-ft");
        dig(file, 3);
        ((ObjectNode) main(file).get("trench")).put("depth", feet(typed));
        assertThat(ids(file).contains("trench-depth-differs")).isEqualTo(described);
    }

    @Test
    void bothDepthsAreNamed() throws IOException {
        ObjectNode file = file("main-3-ft");
        dig(file, 3);
        ((ObjectNode) main(file).get("trench")).put("depth", "4 ft");
        Finding found = only(file, "trench-depth-differs");
        assertThat(found.values()).containsEntry("typed", "4 ft").containsEntry("levels", "3 ft");
        assertThat(found.about()).isEqualTo("M1");
        assertThat(found.severity()).isEqualTo(Severity.MUST);
    }

    @Test
    void depthWithoutLevelsIsToldAsTypedAndAUsualOneAsUsual() throws IOException {
        ObjectNode typed = file("main-3-ft");
        assertThat(ids(typed)).doesNotContain("trench-depth-typed", "trench-depth-usual");
        main(typed).remove("endGrade");
        assertThat(only(typed, "trench-depth-typed").about()).isEqualTo("M1");
        assertThat(only(file("outside-sump"), "trench-depth-usual").about()).isEqualTo("S1");
    }

    /** 29 CFR 1926.652(a)(1)(i): protection from 5 ft; a main is entered like any trench. */
    @ParameterizedTest(name = "main {0} ft deep: {1}")
    @CsvSource({"4.99, upright-shallow", "5, slope-back", "5.01, slope-back"})
    void mainFromFiveFeet(double depth, String id) throws IOException {
        ObjectNode file = file("all-round");
        dig(file, depth);
        assertThat(found(file))
                .filteredOn(finding -> finding.about().contains("M1"))
                .extracting(Finding::id)
                .filteredOn(List.of("upright-shallow", "slope-back")::contains)
                .containsExactly(id);
    }

    /** 29 CFR 1926.651(c)(2): a way out from 4 ft. Air is tested where it is deeper than 4 ft, 1926.651(g)(1). */
    @ParameterizedTest(name = "main {0} ft deep: ladder {1}, air {2}")
    @CsvSource({"3.99, false, false", "4, true, false", "4.01, true, true"})
    void ladderAndAirOfAMain(double depth, boolean ladder, boolean air) throws IOException {
        ObjectNode file = file("all-round");
        dig(file, depth);
        assertThat(only(file, "ladder").about().contains("M1")).isEqualTo(ladder);
        assertThat(only(file, "air-test").about().contains("M1")).isEqualTo(air);
    }

    /** 29 CFR 1926.652(b): over 20 ft an engineer designs it; a stop is told by itself. */
    @ParameterizedTest(name = "main {0} ft deep: stop {1}")
    @CsvSource({"19.99, false", "20, false", "20.01, true"})
    void mainOverTwentyFeet(double depth, boolean stop) throws IOException {
        ObjectNode file = file("all-round");
        dig(file, depth);
        assertThat(found(file).stream()
                        .anyMatch(finding -> finding.id().equals("trench-over-20")
                                && finding.severity() == Severity.STOP
                                && finding.about().equals("M1")))
                .isEqualTo(stop);
    }

    /** 29 CFR 1926.652(a)(1)(ii) and Subpart P App. A: water that seeps freely is an indication of a cave-in. */
    @ParameterizedTest(name = "seepage {0}: {1}")
    @CsvSource({"none, upright-shallow", "damp, upright-shallow", "free, upright-seeping", "unknown, upright-shallow"})
    void uprightBankInSeepingSoilIsNeverAllowed(String seepage, String id) throws IOException {
        ObjectNode file = file("tiny");
        ((ObjectNode) file.get("site").get("soil")).put("seepage", seepage);
        ((ObjectNode) file.get("site").get("soil")).put("type", "C");
        assertThat(ids(file)).filteredOn(found -> found.startsWith("upright-")).containsExactly(id);
    }

    /**
     * The hole is 9.433 ft deep and 2.767 ft deeper than the footing. 1926.651(i), IBC 1804.1: below a footing beside
     * it nobody digs until an engineer answers; beside it is as near as the hole is deep, for a bank that falls in at
     * 1 to 1 reaches that far. Farther off it still wants a look.
     */
    @ParameterizedTest(name = "{0} from the footing: {1}")
    @CsvSource({
        "0, pit-below-footing",
        "2.77, pit-below-footing",
        "9.43, pit-below-footing",
        "9.44, pit-beside-footing",
        ", pit-below-footing"
    })
    void pitNearTheFooting(Double away, String id) throws IOException {
        ObjectNode file = file("outside-sump");
        ObjectNode pit = (ObjectNode) file.get("water").get("outlets").get(0).get("pit");
        pit.remove("fromFooting");
        if (away != null) {
            pit.put("fromFooting", feet(away));
        }
        Finding found = only(file, id);
        assertThat(found.severity()).isEqualTo(id.equals("pit-below-footing") ? Severity.STOP : Severity.MUST);
        assertThat(found.values()).containsEntry("depth", "9 ft 5 in");
        assertThat(ids(file)).filteredOn(one -> one.startsWith("pit-")).containsExactly(id);
    }

    /** Grade less invert, 30 in of basin and 4 in of stone against 6 ft 8 in: even at 3 ft 10 in under grade. */
    @ParameterizedTest(name = "drain {0} ft under grade: told {1}")
    @CsvSource({"3.82, false", "3.8333, false", "3.85, true"})
    void pitAsDeepAsTheFooting(double entry, boolean described) throws IOException {
        ObjectNode file = file("outside-sump");
        ObjectNode drain = (ObjectNode) file.get("water").get("drains").get(0);
        drain.put("endInvert", feet(100 - entry)).put("startInvert", feet(100 - entry + 0.3));
        assertThat(ids(file).stream().anyMatch(id -> id.startsWith("pit-"))).isEqualTo(described);
    }

    @Test
    void endsInTheOpen() throws IOException {
        ObjectNode open = file("all-round");
        assertThat(ids(open)).doesNotContain("ends-open", "end-unknown");
        ObjectNode one = file("main-3-ft");
        assertThat(only(one, "ends-open").values()).containsEntry("ends", "A start, A end");
        digging(one, 0).putObject("ends").put("start", "shielded").put("end", "against something");
        assertThat(ids(one)).doesNotContain("ends-open", "end-unknown", "ramp-unmeasured");
        ObjectNode unknown = file("main-3-ft");
        digging(unknown, 0).putObject("ends").put("start", "unknown").put("end", "ramp");
        assertThat(only(unknown, "end-unknown").values()).containsEntry("where", "start");
        assertThat(only(unknown, "ramp-unmeasured").values()).containsEntry("where", "end");
    }

    /** An upright bank has no face to lay back at its end. */
    @Test
    void uprightTrenchHasNoSlopedEnd() throws IOException {
        assertThat(ids(file("hand-only"))).doesNotContain("ends-open");
    }

    @Test
    void bookWithHandItemsAsksForNone() throws IOException {
        assertThat(ids(file("hand-only"))).doesNotContain("hand-item-missing");
    }

    /** A wall that only hand tools reach, with a book that has items for machines alone, and the same by machine. */
    @Test
    void bookWithoutHandItemsIsToldWhereHandsDig() {
        PriceBook book = Books.standard();
        Map<String, LineItem> machines = new HashMap<>(book.items());
        machines.values().removeIf(item -> !item.standard() && item.follows().isPresent());
        PriceBook bare = new PriceBook(
                book.title(),
                book.dated(),
                machines,
                Map.of(),
                book.earth(),
                book.stoneTonsPerCubicYard(),
                book.truckCubicYards());
        assertThat(HandItems.missing(bare)).isNotEmpty();
        Wall wall = Jobs.wall();
        Digging d = wall.digging();
        Wall byHand = wall.withDigging(new Digging(Access.HAND, d.handShare(), d.bottomWidth(), d.protection()));
        List<Finding> hands = Checked.findings(Jobs.job(byHand), bare).stream()
                .filter(finding -> finding.id().equals("hand-item-missing"))
                .toList();
        assertThat(hands).hasSize(1);
        assertThat(hands.get(0).about()).isEqualTo("A");
        assertThat(hands.get(0).values().get("what"))
                .isEqualTo(HandItems.missing(bare).stream().map(Measure::trade).collect(Collectors.joining(" and ")));
        assertThat(Checked.findings(Jobs.job(wall), bare))
                .noneMatch(finding -> finding.id().equals("hand-item-missing"));
        assertThat(Checked.findings(Jobs.job(byHand), book))
                .noneMatch(finding -> finding.id().equals("hand-item-missing"));
    }

    /** What every trench asks for is asked where anything is dug that people enter, and nowhere else. */
    @Test
    void nothingIsAskedOfATrenchThatIsNotDug() {
        Water none = new Water(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        assertThat(Checked.findings(Jobs.job(Jobs.site(), none)))
                .noneMatch(finding -> finding.id().equals("spoil-back"));
        assertThat(Checked.findings(Jobs.job(Jobs.site(), none, Jobs.wall())))
                .anyMatch(finding -> finding.id().equals("spoil-back"));
    }
}
