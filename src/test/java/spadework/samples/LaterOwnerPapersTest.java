// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.office.aftercare.TransferInput;
import spadework.office.aftercare.Transfers;
import spadework.office.aftercare.WarrantyService;
import spadework.office.reply.TemplateFolder;
import spadework.press.PageText;

/** What a later owner gets names whom to call as the first certificate does, and looks as it does. */
class LaterOwnerPapersTest {
    private static final Path SAMPLE = Path.of("sample-quotes/added-wall-then-closed");
    private static final String[] CALLED = {"Nell Tarrow", "(614) 555-0143"};

    @TempDir
    Path root;

    private Path job;

    @BeforeEach
    void copySample() throws IOException {
        job = root.resolve("job");
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            for (Path file : files.filter(one -> !one.startsWith(SAMPLE.resolve("expected")))
                    .toList()) {
                Path to = job.resolve(SAMPLE.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(file, to);
                }
            }
        }
    }

    @Test
    void theReissuedCertificateIsALeafThatNamesThePersonToCall() throws IOException {
        List<String> pages = PageText.pages(transferred());

        assertThat(pages).hasSize(2);
        assertThat(pages.get(0))
                .contains("passed to the owners named here", "Wall C", "Pipe R1", "August 20, 2036", "Signed for");
        assertThat(pages.get(1)).contains(CALLED).contains("The house stands in Ohio");
    }

    @Test
    void theMaintenanceCardIsOneSideThatNamesThePersonToCall() throws IOException {
        WarrantyService.printCards(job, root.resolve("out"), LocalDate.of(2026, 9, 2), Samples.office());

        List<String> pages = PageText.pages(Files.readAllBytes(root.resolve("out/2026-041-W1-maintenance.pdf")));

        assertThat(pages).hasSize(1);
        assertThat(pages.get(0)).contains(CALLED).contains("any time", "Ends: Waterproofed wall: August 2036");
    }

    private byte[] transferred() throws IOException {
        LocalDate sold = LocalDate.of(2026, 10, 20);
        LocalDate told = LocalDate.of(2026, 11, 10);
        TransferInput asked = new TransferInput(
                Optional.empty(),
                List.of("Ottoline Marchbanks", "Barnaby Quillfeather"),
                told,
                Optional.of(sold),
                Optional.empty(),
                Optional.empty());
        Transfers.transfer(job, asked, TemplateFolder.NONE, told);
        return Files.readAllBytes(job.resolve("for-the-homeowner/2026-041-W2-warranty.pdf"));
    }
}
