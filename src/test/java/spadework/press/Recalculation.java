// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

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

/** Has an office program work every formula of a workbook out again, from a copy that holds no results. */
public final class Recalculation {
    private final Path office;
    private final Path folder;

    /** @param folder an empty folder for profile, copy and result */
    public Recalculation(Path office, Path folder) {
        this.office = office;
        this.folder = folder;
    }

    /** The office program on the path, if there is one. */
    public static Optional<Path> office() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .flatMap(folder -> Stream.of(Path.of(folder, "soffice"), Path.of(folder, "libreoffice")))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Every figure of the workbook, worked out again, to the cent; shares under one to a millionth. */
    public Map<String, BigDecimal> figures(byte[] file) throws IOException, InterruptedException {
        return toCents(recalculated(withoutResults(file)));
    }

    /** Every figure that the workbook shows, to the cent. */
    public static Map<String, BigDecimal> shown(byte[] file) {
        return toCents(WorkbookDump.open(file));
    }

    private Path withoutResults(byte[] file) throws IOException {
        Path bare = Files.createDirectories(folder.resolve("in")).resolve("bare.xlsx");
        try (XSSFWorkbook book = WorkbookDump.open(file);
                var out = Files.newOutputStream(bare)) {
            for (XSSFCell cell : WorkbookDump.cells(book)) {
                if (cell.getCellType() == CellType.FORMULA) {
                    cell.getCTCell().unsetV();
                }
            }
            book.write(out);
        }
        return bare;
    }

    private XSSFWorkbook recalculated(Path bare) throws IOException, InterruptedException {
        Path log = folder.resolve("log");
        Path out = folder.resolve("out");
        Files.deleteIfExists(out.resolve("bare.xlsx"));
        Process process = new ProcessBuilder(
                        office.toString(),
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx:Calc MS Excel 2007 XML",
                        "--outdir",
                        out.toString(),
                        bare.toString())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        boolean ended = process.waitFor(180, TimeUnit.SECONDS);
        if (!ended) {
            process.destroyForcibly();
        }
        assertThat(ended && process.exitValue() == 0).as(Files.readString(log)).isTrue();
        return WorkbookDump.open(Files.readAllBytes(out.resolve("bare.xlsx")));
    }

    private static Map<String, BigDecimal> toCents(XSSFWorkbook book) {
        Map<String, BigDecimal> cents = new LinkedHashMap<>();
        WorkbookDump.figures(book)
                .forEach((place, figure) -> cents.put(
                        place, BigDecimal.valueOf(figure).setScale(figure < 1 ? 6 : 2, RoundingMode.HALF_UP)));
        return cents;
    }
}
