// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.register.Sha256;

/**
 * A job that was signed, changed, paid and closed by the program of 2026, as its folder lay then. It is never told
 * anew: whatever the program becomes, what was signed keeps its figures, its papers and its warranty.
 */
class SignedArchiveTest {
    private static final Path ARCHIVE = Path.of("src/test/resources/spadework/signed/job-of-2026.zip");
    private static final String SUM = "86dcf2dae2626fa62d71842aebbc7a9c031ada2fd9d231e541ded5e5bcff2a34";

    @TempDir
    private Path folder;

    private Path job;
    private StringWriter out;

    @BeforeEach
    void unpack() throws IOException {
        try (InputStream file = Files.newInputStream(ARCHIVE);
                ZipInputStream zip = new ZipInputStream(file)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Path target = folder.resolve(entry.getName()).normalize();
                assertThat(target.startsWith(folder)).isTrue();
                if (!entry.isDirectory()) {
                    Files.createDirectories(target.getParent());
                    Files.write(target, zip.readAllBytes());
                }
            }
        }
        job = folder.resolve("added-wall-then-closed");
    }

    @Test
    void archiveIsTheOneOfThen() throws IOException {
        assertThat(Sha256.of(Files.readAllBytes(ARCHIVE))).isEqualTo(SUM);
    }

    @Test
    void registerAndEveryDocumentHold() {
        assertThat(run("register", "check", job.toString())).isZero();
        assertThat(out.toString()).contains("nothing wrong found in 34 lines and 48 documents");
    }

    @Test
    void contractAsTheHomeownerHasItIsFoundInTheRegister() {
        Path paper = job.resolve("for-the-homeowner/2026-041-A1-contract.pdf");
        assertThat(run("register", "check", job.toString(), "--paper", paper.toString()))
                .isZero();
    }

    @Test
    void sumIsTheOneThatWasSigned() {
        assertThat(run("price", job.toString())).isZero();
        assertThat(out.toString().lines().filter(line -> line.startsWith("Total")))
                .singleElement()
                .asString()
                .endsWith("$30,221.60");
    }

    @Test
    void nothingIsOpenFifteenYearsLater() {
        Path papers = folder.resolve("papers");
        assertThat(run("account", "statement", job.toString(), "--on", "2041-08-01", "--out", papers.toString()))
                .isZero();
    }

    @Test
    void warrantyIsReadAsItWasGiven() {
        assertThat(run("warranty", "show", job.toString())).isZero();
        assertThat(out.toString()).contains("2026-041-W1", "2026-08-21 to 2036-08-20", "Orla Hathersage");
    }

    private int run(String... arguments) {
        out = new StringWriter();
        return Spadework.run(
                new Spadework(LocalDate.of(2041, 8, 1)),
                new PrintWriter(out, true),
                new PrintWriter(out, true),
                arguments);
    }
}
