package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An office program that works every formula out again comes to the figures that the file already shows. */
class WorkbookRecalculationTest {

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}, worked out again")
    @ValueSource(strings = {"proposal", "scope", "certificate", "cost-sheet"})
    void everyFigureIsTheSameToTheCent(String document) throws IOException, InterruptedException {
        Optional<Path> office = office();
        assumeTrue(office.isPresent(), "no soffice on the path, so the workbook cannot be worked out again");
        byte[] file = WorkbookPress.print(
                Templates.bundled(), document, PaperworkFixtures.model(), PaperworkFixtures.ISSUED);
        assertThat(WorkbookDump.figures(WorkbookDump.open(file))).isNotEmpty();
        XSSFWorkbook again = recalculated(office.get(), withoutResults(file));
        assertThat(toCents(WorkbookDump.figures(again)))
                .isEqualTo(toCents(WorkbookDump.figures(WorkbookDump.open(file))));
    }

    /** The same workbook with every formula's result taken out, so that what comes back was worked out afresh. */
    private Path withoutResults(byte[] file) throws IOException {
        Path bare = Files.createDirectories(folder.resolve("in")).resolve("bare.xlsx");
        try (XSSFWorkbook book = WorkbookDump.open(file); var out = Files.newOutputStream(bare)) {
            for (XSSFCell cell : WorkbookDump.cells(book)) {
                if (cell.getCellType() == CellType.FORMULA) {
                    cell.getCTCell().unsetV();
                }
            }
            book.write(out);
        }
        return bare;
    }

    private XSSFWorkbook recalculated(Path office, Path bare) throws IOException, InterruptedException {
        Path log = folder.resolve("log");
        Process process = new ProcessBuilder(
                        office.toString(),
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx:Calc MS Excel 2007 XML",
                        "--outdir",
                        folder.resolve("out").toString(),
                        bare.toString())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        boolean ended = process.waitFor(120, TimeUnit.SECONDS);
        if (!ended) {
            process.destroyForcibly();
        }
        assertThat(ended && process.exitValue() == 0).as(Files.readString(log)).isTrue();
        return WorkbookDump.open(Files.readAllBytes(folder.resolve("out/bare.xlsx")));
    }

    private static Map<String, BigDecimal> toCents(Map<String, Double> figures) {
        Map<String, BigDecimal> cents = new LinkedHashMap<>();
        figures.forEach((place, figure) ->
                cents.put(place, BigDecimal.valueOf(figure).setScale(figure < 1 ? 6 : 2, RoundingMode.HALF_UP)));
        return cents;
    }

    private static Optional<Path> office() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .flatMap(folder -> Stream.of(Path.of(folder, "soffice"), Path.of(folder, "libreoffice")))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
