// SPDX-License-Identifier: Apache-2.0
package spadework.office.crew;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.intake.Intake;
import spadework.intake.ReadJob;
import spadework.job.AsBuilt;
import spadework.job.BuiltWall;
import spadework.job.CoatReadings;
import spadework.job.DayInspection;
import spadework.job.Wall;
import spadework.measure.FilmThickness;
import spadework.office.Bid;
import spadework.office.JobPaper;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.office.SampleJobFolder;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;
import spadework.paperwork.Dossier;
import spadework.paperwork.crew.CrewSheet;
import spadework.paperwork.crew.CrewSheetPaper;
import spadework.paperwork.crew.CrewTrench;
import spadework.press.PageText;
import spadework.press.PrintedCodes;
import spadework.press.PrintedType;
import spadework.press.VeraPdf;
import spadework.press.WorkbookDump;
import spadework.samples.Samples;
import spadework.schedule.CrewCalendar;

/** The crew takes a sheet to the trench; what it writes down comes back into the job as what was built. */
class CrewPapersTest {
    private static final LocalDate ON = LocalDate.of(2026, 9, 14);
    private static final String JOB = "block-basement-to-swale/job.json";

    private static final Path WORDS = Path.of("src/main/resources/spadework/paperwork/crew");

    private static final Map<String, Map<String, Path>> PRINTED = new LinkedHashMap<>();

    @TempDir
    private static Path prints;

    @TempDir
    private Path root;

    private final CrewPapers papers = new CrewPapers(Office.with(TemplateFolder.NONE));

    static List<Path> papered() {
        return Samples.papered();
    }

    private Path job() {
        SampleJobFolder.in(root);
        return root.resolve(JOB);
    }

    /** Of a sample, and of a job that says the same as one before for the same company, once. */
    private Map<String, Path> printed(Path job) throws IOException {
        String said = job.startsWith("sample-quotes")
                ? job.toString()
                : Files.readString(job) + Files.readString(root.resolve("company.json"));
        if (!PRINTED.containsKey(said)) {
            PRINTED.put(said, print(job, prints.resolve("papers-" + PRINTED.size())));
        }
        return PRINTED.get(said);
    }

    private Map<String, Path> print(Path job, Path out) throws IOException {
        Outcome.Printed done = (Outcome.Printed) papers.print(job, ON, out);
        return done.files().stream()
                .collect(Collectors.toMap(file -> file.getFileName().toString(), file -> file));
    }

    private static List<CSVRecord> rows(Path log) throws IOException {
        String text = Files.readString(log).substring(1);
        try (CSVParser rows = CSVParser.parse(
                new StringReader(text),
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            return rows.getRecords();
        }
    }

    /** As a crew fills it in: figures without units, days as it writes them. */
    private static String found(String key) {
        String fact = key.substring(key.lastIndexOf('/') + 1);
        return switch (fact) {
            case "length" -> key.startsWith("walls") ? "26'6" : "61 ft";
            case "depthStart" -> "5 6";
            case "depthEnd" -> "5";
            case "on" -> "9/18/2026";
            case "by" -> "Emil Castor";
            case "photo", "hazards" -> "";
            case "waived" -> "The phone fell into the wash water.";
            case "wet" -> "47 48, 46.5";
            case "gallons" -> "13.5";
            case "batches" -> "LR-2609-1; LR-2609-2";
            case "temperature" -> "air 61, wall 57";
            case "soil" -> "B, ribbon of 2 in by hand";
            case "done" -> "Bank scaled before anybody went in";
            case "startInvert" -> "92.50";
            case "endInvert" -> "92.10";
            case "passed" -> "yes";
            case "what" -> "Hose at the top for 10 minutes, water at the end after 4";
            case "started" -> "9/14/2026";
            case "finished" -> "10/2/2026";
            case "soilFound" -> "b";
            case "stone" -> "16.5";
            case "loads" -> "2";
            case "note" -> "Nothing else.";
            default -> throw new IllegalStateException(key);
        };
    }

    private Path filled(Map<String, String> values) throws IOException {
        StringBuilder text = new StringBuilder("Key,Where,What,Planned,Found\n");
        values.forEach((key, value) -> text.append('"' + key + "\",,,,\"" + value + "\"\n"));
        return Files.writeString(root.resolve("crew-log.csv"), text);
    }

    /** Printed on any day, the sheet of the same agreed work is the same. */
    @Test
    void sheetCarriesTheDayOfTheAgreedWorkWhereNoneIsSaid() throws IOException {
        Outcome.Printed done = (Outcome.Printed) papers.print(job(), root.resolve("documents"));
        Path sheet = done.files().stream()
                .filter(file -> file.toString().endsWith(".pdf"))
                .findFirst()
                .orElseThrow();
        assertThat(PageText.all(Files.readAllBytes(sheet)))
                .as("nothing is accepted yet, so it is the day of the proposal")
                .contains("August 10, 2026");
    }

    @Test
    void sheetWorkbookAndLogLieInTheCrewsFolder() throws IOException {
        assertThat(print(job(), root.resolve("documents")).values())
                .extracting(file -> root.resolve("documents").relativize(file).toString())
                .containsExactlyInAnyOrder(
                        "2026-014/for-the-crew/crew-sheet.pdf",
                        "2026-014/for-the-crew/crew-sheet.xlsx",
                        "2026-014/for-the-crew/crew-sheet-phone.pdf",
                        "2026-014/for-the-crew/scope-of-work.pdf",
                        "2026-014/for-the-crew/crew-log.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void nothingInThemSaysWhatAnythingCosts(Path sample) throws IOException {
        Outcome.Printed done = (Outcome.Printed) papers.print(sample, ON, root);
        for (Path file : done.files()) {
            byte[] bytes = Files.readAllBytes(file);
            String text = file.toString().endsWith(".pdf")
                    ? PageText.all(bytes)
                    : file.toString().endsWith(".xlsx")
                            ? String.join("\n", WorkbookDump.texts(WorkbookDump.open(bytes)))
                            : Files.readString(file);
            assertThat(text).doesNotContain("$").isNotBlank();
        }
    }

    @Test
    void pageConformsToUa1AndA3a() throws IOException {
        byte[] page = Files.readAllBytes(printed(job()).get("crew-sheet.pdf"));
        assertThat(VeraPdf.failedRules(page)).isEmpty();
    }

    @Test
    void sheetTellsEachDayEachWallAndThatTheTrenchIsLookedAt() throws IOException {
        String text = PageText.all(Files.readAllBytes(printed(job()).get("crew-sheet.pdf")));
        assertThat(text)
                .contains(
                        "A, back wall",
                        "B, side wall",
                        "Hold points.",
                        "29 CFR 1926.651(k)(1)",
                        "Trench open.",
                        "call 911");
    }

    /** Samples: a drain that falls to its start, and one that falls from both ends to a sump. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            crawl-space-between-houses | endInvert=96.30 ft startInvert=96.02 ft
            poured-basement-with-sump  | startInvert=92.20 ft endInvert=92.20 ft teeInvert=91.80 ft
            """)
    void levelsOfAPipeStandFromItsHighEndToItsLowEndAsTheJobHasThem(String sample, String levels) throws IOException {
        List<String> planned = rows(
                        printed(Path.of("sample-quotes", sample, "job.json")).get("crew-log.csv"))
                .stream()
                .filter(row ->
                        row.get("Key").startsWith("pipes/D1/") && row.get("Key").endsWith("Invert"))
                .map(row -> row.get("Key").substring("pipes/D1/".length()) + "=" + row.get("Planned"))
                .toList();
        assertThat(String.join(" ", planned)).isEqualTo(levels);
    }

    @Test
    void sheetNamesEveryHoleThatIsEnteredAndWhatStandsBesideIt() throws IOException {
        Path sump = Path.of("sample-quotes", "poured-basement-with-sump", "job.json");
        assertThat(PageText.all(Files.readAllBytes(printed(sump).get("crew-sheet.pdf")))
                        .replaceAll("\\s+", " "))
                .contains("S1, sump pit", "9 ft 7½ in deep, 3 ft 6 in across; ladder", "R1, roof line")
                .contains(
                        "Utility 4 ft from the wall (gas service, marked)", "No soil and no machine over the utility");
    }

    /** One form: whoever fills in the workbook or the table looks for the same as on paper, and as often. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"block-basement-to-swale, 10", "poured-basement-with-sump, 17"})
    void pageWorkbookAndLogAskForTheSameInspection(String sample, int days) throws IOException {
        Map<String, Path> printed = printed(Path.of("sample-quotes", sample, "job.json"));
        String page =
                PageText.all(Files.readAllBytes(printed.get("crew-sheet.pdf"))).replaceAll("\\s+", " ");
        String workbook = String.join(
                        " ", WorkbookDump.texts(WorkbookDump.open(Files.readAllBytes(printed.get("crew-sheet.xlsx")))))
                .replaceAll("\\s+", " ");
        String log = Files.readString(printed.get("crew-log.csv"));
        for (String hazard : List.of("cracks", "water", "bulge", "loose pieces", "load at the edge", "bad air")) {
            assertThat(page).contains(hazard);
            assertThat(workbook).contains(hazard);
            assertThat(log).contains(hazard);
        }
        for (String asked : List.of(
                "soil and machines back",
                "protection in place",
                "stay out",
                "may go in",
                "No tick means stay out",
                "Crew leader",
                "911. We are at",
                "Nobody climbs in after a cave-in",
                "Edge of the bank")) {
            assertThat(page).contains(asked);
            assertThat(workbook).contains(asked);
        }
        assertThat(page.split("Again, after rain or another hazard", -1)).hasSize(1 + 2 * (days + 1));
        assertThat(workbook.split("Again, after rain or another hazard", -1)).hasSize(1 + 2 * days);
    }

    /** What runs over several pages has its column heads on each, and no heading but at the top of its sheet. */
    @Test
    void columnHeadsOfTheWorkbookStandOnEveryPageAndNoColumnIsEmpty() throws IOException {
        byte[] file = Files.readAllBytes(printed(Path.of("sample-quotes/poured-basement-with-sump/job.json"))
                .get("crew-sheet.xlsx"));
        try (XSSFWorkbook book = WorkbookDump.open(file)) {
            List<String> names = IntStream.range(0, book.getNumberOfSheets())
                    .mapToObj(book::getSheetName)
                    .toList();
            assertThat(names)
                    .containsExactly(
                            "Crew sheet",
                            "Trenches and pits",
                            "Day sheet",
                            "Whole job",
                            "Pipes",
                            "Water tests",
                            "Wall A - Wall D");
            for (Sheet sheet : book) {
                boolean onePage = sheet.getPrintSetup().getFitHeight() == 1;
                assertThat(onePage || sheet.getRepeatingRows() != null)
                        .as(sheet.getSheetName())
                        .isTrue();
            }
            assertThat(heads(book, "Pipes")).containsExactly("What", "Planned", "Found");
            assertThat(heads(book, "Water tests")).containsExactly("What", "Found");
        }
    }

    private static List<String> heads(XSSFWorkbook book, String sheet) {
        int head = book.getSheet(sheet).getRepeatingRows().getFirstRow();
        List<String> heads = new ArrayList<>();
        book.getSheet(sheet).getRow(head).forEach(cell -> heads.add(cell.getStringCellValue()));
        return heads;
    }

    @Test
    void logOfFourWallsIsOneTableAndBeginsWithTheWholeJob() throws IOException {
        byte[] page = Files.readAllBytes(printed(Path.of("sample-quotes/poured-basement-with-sump/job.json"))
                .get("crew-sheet.pdf"));
        List<String> pages = PageText.pages(page);
        assertThat(pages.get(pages.size() - 1))
                .contains("Wall A, back wall", "Wall D, west wall", "Batch numbers", "Hold point 2: photo");
        assertThat(PageText.all(page)).containsSubsequence("First day of work", "D1: level at the low end", "Batch");
    }

    /** A third of a page of forms comes to some 700 letters, and its head and foot to 120. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"block-basement-to-swale", "poured-basement-with-sump", "stone-wall-engineer-first"})
    void noPageIsNearlyEmpty(String sample) throws IOException {
        byte[] page = Files.readAllBytes(
                printed(Path.of("sample-quotes", sample, "job.json")).get("crew-sheet.pdf"));
        assertThat(PageText.pages(page))
                .hasSizeGreaterThan(5)
                .allSatisfy(text -> assertThat(text).hasSizeGreaterThan(700));
    }

    /** A screen is about half as wide as it is high; nobody turns it or pulls it wider to read a line. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"block-basement-to-swale", "poured-basement-with-sump", "stone-wall-engineer-first"})
    void phoneGetsOneNarrowColumnWithABlockForEachTrench(String sample) throws IOException {
        Path job = Path.of("sample-quotes", sample, "job.json");
        Bid bid = Samples.bid(job.getParent());
        byte[] phone = Files.readAllBytes(printed(job).get("crew-sheet-phone.pdf"));
        try (PDDocument document = Loader.loadPDF(phone)) {
            assertThat(document.getPages()).hasSizeGreaterThan(3).allSatisfy(page -> {
                assertThat(page.getMediaBox().getWidth()).isEqualTo(3.2f * 72, within(0.1f));
                assertThat(page.getMediaBox().getHeight()).isEqualTo(6.5f * 72, within(0.1f));
            });
        }
        assertThat(PrintedType.of(phone).letters()).hasSizeGreaterThan(2000).allSatisfy(letter -> {
            assertThat(letter.points()).isGreaterThanOrEqualTo(9 - PrintedType.HAIR);
            assertThat(letter.x()).isBetween(14f, 3.2f * 72 - 14);
        });
        assertThat(VeraPdf.failedRules(phone)).isEmpty();
        String text = PageText.all(phone);
        for (CrewTrench dug : sheet(bid).trenches()) {
            assertThat(text).contains(dug.label() + ", " + dug.where());
            assertThat(unbroken(text)).contains(unbroken(dug.trench()), unbroken(dug.bank()));
            dug.beside().forEach(one -> assertThat(unbroken(text)).containsIgnoringCase(unbroken(one)));
        }
        sheet(bid).stops().forEach(stop -> assertThat(unbroken(text)).contains(unbroken(stop.says())));
        bid.dossier()
                .job()
                .walls()
                .forEach(wall -> assertThat(text)
                        .contains("Hold point 1, wall " + wall.label(), "Hold point 2, wall " + wall.label()));
    }

    private static CrewSheet sheet(Bid bid) {
        Dossier dossier = bid.dossier();
        return CrewSheetPaper.of(
                dossier, CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff()), ON);
    }

    /** Without what breaks its lines. */
    private static String unbroken(String text) {
        return text.replaceAll("\\s+", "");
    }

    /** Read as a phone reads them, off the printed page, and held against the scope that lies beside the sheet. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "block-basement-to-swale, crew-sheet.pdf",
        "block-basement-to-swale, crew-sheet-phone.pdf",
        "poured-basement-with-sump, crew-sheet.pdf",
        "poured-basement-with-sump, crew-sheet-phone.pdf",
        "crawl-space-between-houses, crew-sheet-phone.pdf",
        "stone-wall-engineer-first, crew-sheet.pdf"
    })
    void codeOfEachHoldPointLeadsToThePageOfItsStep(String sample, String file) throws IOException {
        Map<String, Path> printed = printed(Path.of("sample-quotes", sample, "job.json"));
        byte[] sheet = Files.readAllBytes(printed.get(file));
        List<String> scope = PageText.pages(Files.readAllBytes(printed.get("scope-of-work.pdf")));
        List<String> walls = Samples.bid(Path.of("sample-quotes", sample)).dossier().job().walls().stream()
                .map(Wall::label)
                .toList();
        List<String> expected = new ArrayList<>();
        for (String wall : walls) {
            for (int point : List.of(1, 2)) {
                expected.add(link(scope, "Wall " + wall + ", ", point));
            }
        }
        expected.add(link(scope, "", 3));
        assertThat(PrintedCodes.in(sheet)).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(unbroken(PageText.all(sheet))).contains(expected);
    }

    /** The one page of the scope with that heading on which that hold point stands. */
    private static String link(List<String> scope, String heading, int point) {
        List<Integer> pages = IntStream.rangeClosed(1, scope.size())
                .filter(page -> scope.get(page - 1).contains(heading)
                        && scope.get(page - 1).contains("Hold point " + point))
                .boxed()
                .toList();
        assertThat(pages).as(heading + point).hasSize(1);
        return "scope-of-work.pdf#page=" + pages.get(0);
    }

    @Test
    void codesHaveAnAlternativeThatSaysWhatTheyRead() throws IOException {
        byte[] sheet = Files.readAllBytes(printed(job()).get("crew-sheet.pdf"));
        assertThat(VeraPdf.failedRules(sheet)).isEmpty();
        try (PDDocument document = Loader.loadPDF(sheet)) {
            assertThat(alternatives(
                            document.getDocumentCatalog().getStructureTreeRoot().getKids()))
                    .filteredOn(text -> text.startsWith("Square code that reads scope-of-work.pdf#page="))
                    .hasSize(PrintedCodes.in(sheet).size());
        }
    }

    private static List<String> alternatives(List<Object> kids) {
        List<String> texts = new ArrayList<>();
        for (Object kid : kids) {
            if (kid instanceof PDStructureElement element) {
                Optional.ofNullable(element.getAlternateDescription()).ifPresent(texts::add);
                texts.addAll(alternatives(element.getKids()));
            }
        }
        return texts;
    }

    @Test
    void levelsThatNobodyReadAreNotFilledIn() throws IOException {
        Path job = job();
        assertThat(papers.take(job, filled(Map.of("started", "9/14/2026", "pipes/D1/length", "61 ft")))
                        .err())
                .isEmpty();
        assertThat(built(job).pipe("D1").orElseThrow().startInvert()).isEmpty();
    }

    @Test
    void whatTheCrewWroteIsWhatWasBuilt() throws IOException {
        Path job = job();
        Map<String, String> values = new LinkedHashMap<>();
        for (CSVRecord row : rows(printed(job).get("crew-log.csv"))) {
            String found = found(row.get("Key"));
            if (!found.isEmpty()) {
                values.put(row.get("Key"), found);
            }
        }
        Reply reply = papers.take(job, filled(values));
        assertThat(reply.err()).isEmpty();
        AsBuilt built =
                ((ReadJob) new Intake().read(job)).job().agreement().asBuilt().orElseThrow();
        assertThat(built.started()).isEqualTo(LocalDate.of(2026, 9, 14));
        assertThat(built.stone().orElseThrow().tons()).isEqualTo(16.5);
        assertThat(built.loads()).contains(2);
        assertThat(built.walls()).extracting(BuiltWall::label).containsExactly("A", "B");
        BuiltWall wall = built.wall("A").orElseThrow();
        assertThat(wall.length().inches()).isEqualTo(26 * 12 + 6);
        assertThat(wall.depthStart().inches()).isEqualTo(66);
        assertThat(wall.gallons().orElseThrow()).isEqualByComparingTo("13.5");
        assertThat(wall.batches()).containsExactly("LR-2609-1", "LR-2609-2");
        assertThat(wall.holdPoints()).extracting(point -> point.number()).containsExactly(1, 2);
        assertThat(wall.holdPoints()).allMatch(point -> point.isProved());
        assertThat(wall.coats()).extracting(CoatReadings::number).containsExactly(1, 2);
        assertThat(wall.coats().get(0).wet()).extracting(FilmThickness::mils).containsExactly(47.0, 48.0, 46.5);
        assertThat(wall.thinnestWet()).contains(93.0);
        assertThat(built.flowTests())
                .allMatch(test -> test.passed() && test.line().isPresent());
        assertThat(built.inspections())
                .isNotEmpty()
                .allMatch(look -> look.by().equals("Emil Castor"))
                .extracting(DayInspection::on)
                .doesNotHaveDuplicates();
    }

    @Test
    void takingTheSameLogTwiceChangesNothing() throws IOException {
        Path job = job();
        Map<String, String> values = new LinkedHashMap<>();
        rows(printed(job).get("crew-log.csv")).forEach(row -> values.put(row.get("Key"), found(row.get("Key"))));
        Path log = filled(values);
        assertThat(papers.take(job, log).err()).isEmpty();
        String once = Files.readString(job);
        assertThat(papers.take(job, log).err()).isEmpty();
        assertThat(Files.readString(job)).isEqualTo(once);
    }

    /** Nothing English is on it but what somebody typed: names, places, where a wall is, what an item is called. */
    @ParameterizedTest
    @ValueSource(strings = {"es", "spanish"})
    void spanishCrewGetsItsSheetItsWorkbookAndItsLogInSpanish(String written) throws IOException {
        Path job = job();
        Path company = root.resolve("company.json");
        Files.writeString(
                company, Files.readString(company).replaceFirst("\\{", "{\"crewLanguage\": \"" + written + "\","));
        Map<String, Path> printed = printed(job);
        byte[] page = Files.readAllBytes(printed.get("crew-sheet.pdf"));
        String sheet = PageText.all(page);
        assertThat(sheet)
                .contains("Hoja de la cuadrilla", "septiembre de 2026", "Nadie trabaja en agua estancada")
                .contains("29 CFR 1926.651(k)(1)", "página 1 de");
        assertThat(VeraPdf.failedRules(page)).isEmpty();
        byte[] narrow = Files.readAllBytes(printed.get("crew-sheet-phone.pdf"));
        assertThat(VeraPdf.failedRules(narrow)).isEmpty();
        String phone = PageText.all(narrow);
        assertThat(phone)
                .contains("Punto de espera 1, pared A", "Alcance del trabajo, página", "Para leer en un teléfono");
        assertThat(sheet).contains("Punto de espera 3, todos los tubos", "Alcance del trabajo, página");
        String workbook = String.join(
                "\n", WorkbookDump.texts(WorkbookDump.open(Files.readAllBytes(printed.get("crew-sheet.xlsx")))));
        String log = Files.readString(printed.get("crew-log.csv"));
        assertThat(log.lines().findFirst().orElseThrow()).endsWith("Clave,Dónde,Qué,Planeado,Encontrado");
        Set<String> english = new TreeSet<>(words(said("words.properties")));
        english.removeAll(words(said("words_es.properties")));
        english.removeAll(words(Files.readString(job)));
        english.removeAll(words(Files.readString(company)));
        english.addAll(List.of("to", "falls", "wide", "deep", "ticket"));
        assertThat(english).contains("nobody", "ladder", "thumb").hasSizeGreaterThan(80);
        for (String text : List.of(sheet, phone, workbook, log.replaceAll("(?m)^(\"[^\"]*\"|[^,]*),", ""))) {
            String said = text.replaceAll("scope-of-\\s*work\\s*\\.\\s*pdf\\s*(#\\s*page\\s*=)?", "");
            assertThat(words(said)).doesNotContainAnyElementsOf(english);
        }
    }

    /** What stands in a bundle, without its keys. */
    private static String said(String bundle) throws IOException {
        return Files.readString(WORDS.resolve(bundle)).replaceAll("(?m)^[^=\n]*=", "");
    }

    private static Set<String> words(String text) {
        return Pattern.compile("\\p{L}+")
                .matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void spanishLogIsTakenBack() throws IOException {
        Path job = job();
        Path log = Files.writeString(root.resolve("crew-log.csv"), """
                Clave,Dónde,Qué,Planeado,Encontrado
                started,,,,9/14/2026
                flowTests/D1/on,,,,9/24/2026
                flowTests/D1/by,,,,Emil Castor
                flowTests/D1/passed,,,,Sí
                flowTests/D1/what,,,,Manguera arriba
                """);
        assertThat(papers.take(job, log).err()).isEmpty();
        assertThat(built(job).flowTests())
                .singleElement()
                .satisfies(test -> assertThat(test.passed()).isTrue());
    }

    /** Every row of the Spanish table filled in comes back as that of the English one does. */
    @Test
    void spanishLogThatIsFilledInAllOverIsWhatWasBuilt() throws IOException {
        Path job = job();
        Path company = root.resolve("company.json");
        Files.writeString(company, Files.readString(company).replaceFirst("\\{", "{\"crewLanguage\": \"spanish\","));
        StringBuilder text = new StringBuilder("Clave,Dónde,Qué,Planeado,Encontrado\n");
        List<CSVRecord> rows = rows(printed(job).get("crew-log.csv"));
        for (CSVRecord row : rows) {
            String key = row.get("Clave");
            String found = key.endsWith("/passed") ? "sí" : found(key);
            text.append('"' + key + "\",,,,\"" + found + "\"\n");
        }
        assertThat(rows).hasSizeGreaterThan(60);
        assertThat(papers.take(job, Files.writeString(root.resolve("crew-log.csv"), text))
                        .err())
                .isEmpty();
        AsBuilt built = built(job);
        assertThat(built.walls()).extracting(BuiltWall::label).containsExactly("A", "B");
        assertThat(built.wall("B").orElseThrow().holdPoints())
                .extracting(point -> point.number())
                .containsExactly(1, 2);
        assertThat(built.wall("A").orElseThrow().thinnestWet()).contains(93.0);
        assertThat(built.inspections()).hasSize(10).allMatch(look -> look.by().equals("Emil Castor"));
        assertThat(built.flowTests()).isNotEmpty().allMatch(test -> test.passed());
    }

    private static AsBuilt built(Path job) throws IOException {
        return ((ReadJob) new Intake().read(job)).job().agreement().asBuilt().orElseThrow();
    }

    /** On the first evening there is no last day, no length of a pipe, no test; the office has the start already. */
    @Test
    void logOfTheFirstEveningIsTakenAndTheNextOneAddsToIt() throws IOException {
        Path job = job();
        assertThat(papers.take(
                                job,
                                filled(Map.of(
                                        "started", "9/14/2026",
                                        "inspections/2026-09-14/by", "Emil Castor",
                                        "inspections/2026-09-14/soil", "B, ribbon of 2 in by hand")))
                        .err())
                .isEmpty();
        assertThat(built(job).finished()).isEmpty();
        assertThat(built(job).pipe("D1").orElseThrow().length().feet())
                .as("as planned")
                .isEqualTo(71);
        Office office = Office.with(TemplateFolder.NONE);
        assertThat(JobPaper.of((Bid) office.bid(job)))
                .as("no completion of work that goes on")
                .noneMatch(paper -> paper.paper() == PaperKind.COMPLETION);
        assertThat(papers.take(job, filled(Map.of("pipes/D1/length", "61 ft", "finished", "10/2/2026")))
                        .err())
                .isEmpty();
        assertThat(built(job).finished()).contains(LocalDate.of(2026, 10, 2));
        assertThat(built(job).pipe("D1").orElseThrow().length().feet()).isEqualTo(61);
        assertThat(built(job).inspections()).hasSize(1);
        assertThat(JobPaper.of((Bid) office.bid(job))).anyMatch(paper -> paper.paper() == PaperKind.COMPLETION);
    }

    @Test
    void logWithoutTheFirstDayIsToldInItsOwnWordsBesideWhatElseIsWrong() throws IOException {
        Reply reply = papers.take(job(), filled(Map.of("walls/A/length", "very long")));
        assertThat(reply.done()).isFalse();
        assertThat(String.join("\n", reply.err()))
                .contains("found no first day of work", "First day of work", "/asBuilt/walls/0/length");
    }

    @Test
    void dayThatThePlanDidNotHaveIsTakenToo() throws IOException {
        Path job = job();
        Map<String, String> values = new LinkedHashMap<>();
        rows(printed(job).get("crew-log.csv")).forEach(row -> values.put(row.get("Key"), found(row.get("Key"))));
        values.put("inspections/2026-09-19/by", "Emil Castor");
        values.put("inspections/2026-09-19/soil", "C after the rain");
        assertThat(papers.take(job, filled(values)).err()).isEmpty();
        assertThat(((ReadJob) new Intake().read(job))
                        .job()
                        .agreement()
                        .asBuilt()
                        .orElseThrow()
                        .inspections())
                .extracting(DayInspection::soil)
                .contains("C after the rain");
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(textBlock = """
            walls/Z/length,                 26 ft,     row 2: found key "walls/Z/length"
            ../notes,                       words,     row 2: found key "../notes"
            walls/A/length,                 very long, /asBuilt/walls/0/length
            walls/A/coats/1/wet,            4 apples,  /asBuilt/walls/0/coats/0/wet
            flowTests/D1/passed,            perhaps,   /asBuilt/flowTests
            started,                        someday,   /asBuilt/started
            """)
    void wrongValueIsToldByItsPlaceAndNothingIsWritten(String key, String value, String told) throws IOException {
        Path job = job();
        String before = Files.readString(job);
        Reply reply = papers.take(job, filled(Map.of(key, value)));
        assertThat(reply.done()).isFalse();
        assertThat(String.join("\n", reply.err())).contains(told).contains("fix:");
        assertThat(Files.readString(job)).isEqualTo(before);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Nothing,At,All              | columns
            Key,Found                   | nothing filled in
            Key,Found\\nstarted,2026-09-14\\nstarted,2026-09-15 | once more
            Key,Found\\nstarted,"2026    | table
            """)
    void spoiledTableIsToldAndNothingIsWritten(String table, String told) throws IOException {
        Path job = job();
        String before = Files.readString(job);
        Path log = Files.writeString(root.resolve("crew-log.csv"), table.replace("\\n", "\n"));
        Reply reply = papers.take(job, log);
        assertThat(reply.done()).isFalse();
        assertThat(String.join("\n", reply.err())).contains(told);
        assertThat(Files.readString(job)).isEqualTo(before);
    }

    @Test
    void tableOfASpreadsheetThatPartsBySemicolonsIsRead() throws IOException {
        CrewLogFile.Filled filled =
                CrewLogFile.read("log.csv", "Key;Found\nstarted;14.9.2026\nloads;3\n", Set.of("started", "loads"));
        assertThat(filled.faults()).isEmpty();
        assertThat(filled.values()).containsEntry("loads", "3").containsKey("started");
    }
}
