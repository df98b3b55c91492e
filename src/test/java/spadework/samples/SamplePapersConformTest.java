package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.office.Outcome;
import spadework.office.Paper;
import spadework.press.Recalculation;
import spadework.press.VeraPdf;

/** Every paper of every sample: the PDF by the standards it claims, the workbook worked out again. */
class SamplePapersConformTest {
    @TempDir
    Path out;

    @TempDir
    Path office;

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void pdfConformsToUa1AndA3a(Path sample) throws IOException {
        int seen = 0;
        for (Path file : print(sample)) {
            if (file.toString().endsWith(".pdf")) {
                assertThat(VeraPdf.failedRules(Files.readAllBytes(file))).as(file.toString()).isEmpty();
                seen++;
            }
        }
        assertThat(seen).isEqualTo(4);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void workbookWorkedOutAgainDiffersByNoCent(Path sample) throws IOException, InterruptedException {
        Optional<Path> program = Recalculation.office();
        assumeTrue(program.isPresent(), "no soffice on the path, so the workbooks cannot be worked out again");
        Recalculation recalculation = new Recalculation(program.get(), office);
        int seen = 0;
        for (Path file : print(sample)) {
            if (file.toString().endsWith(".xlsx")) {
                byte[] book = Files.readAllBytes(file);
                assertThat(recalculation.figures(book)).as(file.toString()).isEqualTo(Recalculation.shown(book));
                seen++;
            }
        }
        assertThat(seen).isEqualTo(4);
    }

    private List<Path> print(Path sample) throws IOException {
        return ((Outcome.Printed) Samples.office().documents(sample, out, EnumSet.allOf(Paper.class))).files();
    }

    static List<Path> papered() {
        return Samples.papered();
    }
}
