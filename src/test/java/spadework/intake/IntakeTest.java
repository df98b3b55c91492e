// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.company.TaxMode;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.ExtraItem;
import spadework.job.Footing;
import spadework.job.Job;
import spadework.job.Protection;
import spadework.job.Restoration;
import spadework.job.SoilType;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.measure.Area;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.pricebook.Material;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;

class IntakeTest {
    @TempDir
    Path folder;

    @Test
    void jobIsReadAsItIsWritten() {
        Job job = understood(SampleFiles.in(folder)).job();
        assertThat(job.issued()).isEqualTo(LocalDate.of(2026, 3, 3));
        assertThat(job.walls()).extracting(Wall::length).containsExactly(Length.ofFeet(46.5), Length.ofFeet(30));
        assertThat(job.getWall("A").depthStart()).isEqualTo(Length.ofFeet(5));
        assertThat(job.getWall("A").depthEnd()).isEqualTo(Length.ofFeet(4.5));
        assertThat(job.getWall("B").depthStart()).isEqualTo(job.getWall("B").depthEnd());
        assertThat(job.corners().get(0).first()).isEqualTo(new WallEnd("A", true));
        assertThat(job.corners().get(0).second()).isEqualTo(new WallEnd("B", false));
        assertThat(job.items())
                .containsExactly(
                        new ExtraItem("ROCK", Optional.of(BigDecimal.valueOf(2)), "A", "Boulders seen at the corner"));
        assertThat(job.water().mains().get(0).endInvert()).contains(Length.ofFeet(-1.5));
        assertThat(job.site().yearBuilt()).contains(1964);
    }

    @Test
    void companyIsReadAsItIsWritten() {
        var company = understood(SampleFiles.in(folder)).company();
        assertThat(company.wages().get("operator").hourly()).isEqualTo(Dollars.of("20.00"));
        assertThat(company.wages().get("operator").burden()).isEqualTo(Percent.of("56.5"));
        assertThat(company.crews().get("dig crew").get(0).count()).isEqualTo(1);
        assertThat(company.machines()).containsEntry("mini-excavator", Dollars.of("48.00"));
        assertThat(company.slowdowns().get(0).factor()).isEqualByComparingTo("1.25");
        assertThat(company.priceRules().minimum()).isEqualTo(Dollars.of("2500.00"));
    }

    /** Lump-sum work on a building carries no tax line; a kind of work that does has its own setting. */
    @Test
    void jobIsTaxedAsItsClassIs() throws IOException {
        SampleFiles sample = SampleFiles.in(folder);
        assertThat(understood(sample).company().tax().mode()).isEqualTo(TaxMode.ON_PRICE);
        Path file = folder.resolve("job.json");
        Files.writeString(file, Files.readString(file).replace("\"taxClass\": \"repair\", ", ""));
        assertThat(understood(sample).company().tax().mode()).isEqualTo(TaxMode.ON_PURCHASES);
    }

    @Test
    void ownBookAddsToTheBundledOneAndKeepsTheRestOfIt() {
        PriceBook book = understood(SampleFiles.in(folder)).book();
        assertThat(book.items().keySet())
                .containsExactlyInAnyOrder(
                        "DIG-MACH", "STRIP-MEM", "DRN-PIPE", "COAT-RUBBER", "STONE", "ROCK", "MAIN-PIPE");
        assertThat(book.title()).isEqualTo("Own book");
        assertThat(book.stoneTonsPerCubicYard()).isEqualTo(1.45);
        assertThat(book.get("COAT-RUBBER").material())
                .contains(new Material(
                        Dollars.of("190.00"),
                        "5 gal pail",
                        BigDecimal.valueOf(5),
                        Unit.GALLON,
                        new BigDecimal("0.05"),
                        Optional.of(Measure.COAT_GALLONS),
                        Percent.of("10")));
    }

    @Test
    void ownItemReplacesTheBundledOneWithItsCode() {
        PriceBook book = understood(SampleFiles.in(folder)
                        .with("price-book.json", "\"code\": \"ROCK\"", "\"code\": \"DIG-MACH\"")
                        .with("job.json", "\"code\": \"ROCK\", \"quantity\"", "\"code\": \"DIG-MACH\", \"quantity\"")
                        .with("job.json", "\"code\": \"ROCK\"", "\"code\": \"DIG-MACH\""))
                .book();
        assertThat(book.get("DIG-MACH").subcontract()).contains(Dollars.of("120.00"));
        assertThat(book.get("DIG-MACH").labor()).isEmpty();
    }

    @Test
    void bookThatOnlyStartsFromTheBundledOneIsTheBundledOne() throws IOException {
        SampleFiles files = SampleFiles.in(folder).with("price-book.json", bytes("{\"startsFrom\": \"default\"}"));
        files.with("job.json", bytes(smallJob("")));
        PriceBook book = understood(files).book();
        assertThat(book.title()).isEqualTo("Small default book");
        assertThat(book.items()).hasSize(3);
        assertThat(book.truckCubicYards()).isEqualTo(10);
    }

    @Test
    void whatAJobLeavesOpenIsUsualOrTheCompanys() throws IOException {
        SampleFiles files = SampleFiles.in(folder).with("job.json", bytes(smallJob("""
                , "walls": [{"label": "A", "where": "back", "faces": "north", "from": "0 ft", "length": "20 ft",
                  "depth": "5 ft", "kind": "block", "finish": {"system": "coating"},
                  "condition": {"surface": "bare", "cracks": "0 ft", "horizontalCrack": false, "displaced": false,
                    "footingUndermined": false}}]""")));
        ReadJob understood = understood(files);
        Job job = understood.job();
        Wall wall = job.getWall("A");
        Area none = Area.ofSquareFeet(0);
        assertThat(job.validDays()).isEqualTo(30);
        assertThat(job.payments()).isEqualTo(understood.company().payments());
        assertThat(job.warranty()).isEqualTo(understood.company().warranty());
        assertThat(job.site().soil().type()).isEqualTo(SoilType.NOT_CLASSED);
        assertThat(job.restoration())
                .isEqualTo(new Restoration(Length.ZERO, none, Length.ofInches(4), none, none, none, 0));
        assertThat(wall.footing()).isEqualTo(new Footing(Length.ofInches(8), Length.ofInches(6), false));
        assertThat(wall.digging())
                .isEqualTo(new Digging(Access.MACHINE, Percent.ZERO, Length.ofInches(24), Protection.SLOPED));
        assertThat(wall.windowWells()).isZero();
        assertThat(wall.condition().bow()).isEmpty();
        assertThat(wall.condition().tiedToFloor()).isEmpty();
        assertThat(job.water().drains()).isEmpty();
        assertThat(job.closed()).isEmpty();
    }

    @Test
    void folderStandsForTheJobInIt() {
        SampleFiles files = SampleFiles.in(folder);
        ReadJob byFolder = understood(files);
        assertThat(new Intake(SampleFiles.BUNDLED).read(folder.resolve("job.json")))
                .isEqualTo(byFolder);
        assertThat(byFolder.jobFolder()).isEqualTo(folder);
    }

    @Test
    void companyAndBookMayLieInAFolderAboveAndAreReadOnce() throws IOException {
        SampleFiles.in(folder);
        Path deep = Files.createDirectories(folder.resolve("2026/march"));
        Path other = Files.createDirectories(folder.resolve("2026/april"));
        Files.copy(folder.resolve("job.json"), deep.resolve("job.json"));
        Files.move(folder.resolve("job.json"), other.resolve("job.json"));
        Intake intake = new Intake(SampleFiles.BUNDLED);
        ReadJob first = (ReadJob) intake.read(deep);
        ReadJob second = (ReadJob) intake.read(other);
        assertThat(second.company()).isEqualTo(first.company());
        assertThat(second.book()).isSameAs(first.book());
        assertThat(second.jobFolder()).isEqualTo(other);
    }

    @Test
    void nearestCompanyWins() throws IOException {
        SampleFiles.in(folder);
        Path deep = Files.createDirectories(folder.resolve("deep"));
        SampleFiles.in(deep).without("price-book.json").with("company.json", "Sample Diggers", "Nearer Diggers");
        ReadJob reading = (ReadJob) new Intake(SampleFiles.BUNDLED).read(deep);
        assertThat(reading.company().name()).isEqualTo("Nearer Diggers LLC");
    }

    @Test
    void missingFilesAreAFaultEachAndTheJobIsStillRead() throws IOException {
        SampleFiles files = SampleFiles.in(folder)
                .without("company.json")
                .without("price-book.json")
                .with("job.json", "\"validDays\": 21", "\"validDays\": 0");
        assertThat(files.faults())
                .containsExactly(
                        "company.json: found no file; allowed: company.json in the job's folder or one above it; "
                                + "fix: put it there",
                        "job.json:6:16 /validDays: found 0; allowed: a whole number from 1 to 365; fix: count again",
                        "price-book.json: found no file; allowed: price-book.json in the job's folder or one above it; "
                                + "fix: put it there");
    }

    @Test
    void missingJobIsAFault() throws IOException {
        assertThat(SampleFiles.in(folder).without("job.json").faults())
                .containsExactly("job.json: found no file; allowed: a job file; fix: check the path");
    }

    @Test
    void everyFaultIsToldAtOnceInTheOrderOfTheFiles() {
        List<String> faults = SampleFiles.in(folder)
                .with("job.json", "\"validDays\": 21", "\"validDays\": 0")
                .with("job.json", "\"state\": \"OH\"", "\"state\": \"ZZ\"")
                .with("job.json", "\"system\": \"coating\"}", "\"system\": \"paint\"}")
                .with("job.json", "\"share\": \"90%\"", "\"share\": \"80%\"")
                .with("company.json", "\"profit\": \"12%\"", "\"profit\": \"120%\"")
                .with("price-book.json", "\"crew\": \"dig crew\"", "\"crew\": \"dug crew\"")
                .faults();
        assertThat(faults)
                .extracting(fault -> fault.substring(0, fault.indexOf(": found")))
                .containsExactly(
                        "company.json:24:15 /priceRules/profit",
                        "job.json:6:16 /validDays",
                        "job.json:9:73 /customer/mailing/state",
                        "job.json:76:28 /walls/1/finish/system",
                        "job.json:153:15 /payments",
                        "price-book.json:23:25 /items/0/labor/crew");
    }

    @Test
    void unreadableNameAccusesNothingThatRefersToIt() {
        SampleFiles files = SampleFiles.in(folder)
                .with("job.json", "\"label\": \"B\"", "\"label\": 7")
                .with("company.json", "\"crews\": {", "\"crews\": 7, \"crws\": {");
        assertThat(files.faults())
                .extracting(fault -> fault.substring(0, fault.indexOf(": found")))
                .containsExactly(
                        "company.json:17:12 /crews", "company.json:17:15 /crws", "job.json:62:16 /walls/1/label");
    }

    private static ReadJob understood(SampleFiles files) {
        assertThat(files.faults()).isEmpty();
        return (ReadJob) files.read();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String smallJob(String more) {
        return """
                {"number": "1", "title": "Small", "issued": "2026-03-03", "customer": {"names": ["Ada Sample"]},
                 "site": {"space": "basement", "soil": {"texture": "clay", "seepage": "unknown"},
                   "address": {"street": "1 Row", "city": "Pellmark", "state": "DC", "zip": "20000"},
                   "house": {"eastWest": "40 ft", "northSouth": "30 ft"}},
                 "schedule": {"earliestStart": "2026-03-03", "latestFinish": "2026-03-03", "workingDays": 1}""" + more + "}";
    }
}
