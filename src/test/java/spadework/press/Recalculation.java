// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
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
        return figures(List.of(file)).get(0);
    }

    /** The same of several workbooks, for which the office program, slow to start, starts once. */
    public List<Map<String, BigDecimal>> figures(List<byte[]> files) throws IOException, InterruptedException {
        List<Path> bare = new ArrayList<>();
        for (byte[] file : files) {
            bare.add(withoutResults(file, bare.size()));
        }
        recalculate(bare);
        List<Map<String, BigDecimal>> figures = new ArrayList<>();
        for (Path file : bare) {
            figures.add(toCents(
                    WorkbookDump.open(Files.readAllBytes(folder.resolve("out").resolve(file.getFileName())))));
        }
        return figures;
    }

    /** Every figure that the workbook shows, to the cent. */
    public static Map<String, BigDecimal> shown(byte[] file) {
        return toCents(WorkbookDump.open(file));
    }

    private Path withoutResults(byte[] file, int number) throws IOException {
        Path bare = Files.createDirectories(folder.resolve("in")).resolve("bare-" + number + ".xlsx");
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

    private void recalculate(List<Path> bare) throws IOException, InterruptedException {
        Path log = folder.resolve("log");
        Path out = Files.createDirectories(folder.resolve("out"));
        List<String> command = new ArrayList<>(List.of(
                office.toString(),
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                "xlsx:Calc MS Excel 2007 XML",
                "--outdir",
                out.toString()));
        for (Path file : bare) {
            Files.deleteIfExists(out.resolve(file.getFileName()));
            command.add(file.toString());
        }
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        boolean ended = process.waitFor(300, TimeUnit.SECONDS);
        if (!ended) {
            process.destroyForcibly();
        }
        assertThat(ended && process.exitValue() == 0).as(Files.readString(log)).isTrue();
    }

    private static Map<String, BigDecimal> toCents(XSSFWorkbook book) {
        Map<String, BigDecimal> cents = new LinkedHashMap<>();
        WorkbookDump.figures(book)
                .forEach((place, figure) -> cents.put(
                        place, BigDecimal.valueOf(figure).setScale(figure < 1 ? 6 : 2, RoundingMode.HALF_UP)));
        return cents;
    }
}
