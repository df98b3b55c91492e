// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Issuing;
import spadework.office.agreement.SignatureInput;
import spadework.office.reply.TemplateFolder;
import spadework.register.Register;

/**
 * The disks of Windows and macOS, in memory: backslashes, drives, names that differ in case alone. What a real disk
 * does beyond that, such as refusing to move a file onto one that is open, is not seen here.
 */
class OtherSystemsTest {
    @TempDir
    private Path here;

    /** From the first issue to the last paper. */
    private static SampleJobFolder walk(Path root) throws IOException {
        Office office = Office.with(TemplateFolder.NONE);
        SampleJobFolder site = SampleJobFolder.in(Files.createDirectories(root));
        MisuseCase.done(new Issuing(office, SampleJobFolder.TODAY).issue(site.folder()));
        MisuseCase.done(new Accepting(office, SampleJobFolder.TODAY)
                .accept(site.folder(), List.of("OP1"), SampleJobFolder.yes()));
        site.addChange(1);
        MisuseCase.done(MisuseCase.decide(site, 1, true, SampleJobFolder.on("2026-09-13")));
        site.finish(
                List.of("A", "B", "C", "W1"),
                ((Bid) office.bid(site.folder())).dossier().contract().total().text());
        MisuseCase.done(MisuseCase.close(site, "2026-10-01", MisuseCase.WORK_ENDED, Optional.empty()));
        return site;
    }

    /** Every file by its name below the root, with a slash as in the register, and a mark of its bytes. */
    private static Map<String, Integer> files(Path root) throws IOException {
        Map<String, Integer> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(root)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = root.relativize(file).toString().replace('\\', '/');
                files.put(name, Arrays.hashCode(Files.readAllBytes(file)));
            }
        }
        return files;
    }

    @Test
    void walkOfAJobLeavesTheSameFilesToTheByteOnWindowsAndMac() throws IOException {
        walk(here);
        Map<String, Integer> expected = files(here);
        assertThat(expected).hasSizeGreaterThan(30);
        try (FileSystem windows = Jimfs.newFileSystem(Configuration.windows());
                FileSystem mac = Jimfs.newFileSystem(Configuration.osX())) {
            for (Path root :
                    List.of(windows.getPath("C:\\Spadework jobs"), mac.getPath("/Users/owner/Spadework jobs"))) {
                SampleJobFolder site = walk(root);
                assertThat(files(root)).isEqualTo(expected);
                assertThat(Register.of(site.folder()).check().faults()).isEmpty();
            }
        }
    }

    @Test
    void papersOfAWindowsFolderAreFoundAgainWhateverTheCaseOfItsName() throws IOException {
        try (FileSystem windows = Jimfs.newFileSystem(Configuration.windows())) {
            Path root = windows.getPath("C:\\Jobs");
            SampleJobFolder site = SampleJobFolder.in(Files.createDirectories(root));
            MisuseCase.done(new Issuing(MisuseCase.OFFICE, SampleJobFolder.TODAY).issue(site.folder()));
            Path shouted = windows.getPath("c:\\JOBS").resolve(site.folder().getFileName());
            assertThat(MisuseCase.described(new Issuing(MisuseCase.OFFICE, SampleJobFolder.TODAY).issue(shouted)))
                    .contains("2026-014-P1");
            assertThat(Register.of(shouted).check().faults()).isEmpty();
        }
    }

    /** As an editor of Windows leaves a file: every line ends with two characters. */
    @Test
    void jobWithTheLineEndsOfWindowsPricesTheSame() throws IOException {
        SampleJobFolder site = SampleJobFolder.in(here);
        Bid bid = (Bid) MisuseCase.OFFICE.bid(site.folder());
        String text = Files.readString(site.file());
        Files.write(site.file(), text.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
        assertThat(((Bid) MisuseCase.OFFICE.bid(site.folder()))
                        .dossier()
                        .contract()
                        .total())
                .isEqualTo(bid.dossier().contract().total());
        MisuseCase.done(new Issuing(MisuseCase.OFFICE, SampleJobFolder.TODAY).issue(site.folder()));
        SignatureInput yes = SampleJobFolder.on(LocalDate.of(2026, 8, 20).toString());
        MisuseCase.done(new Accepting(MisuseCase.OFFICE, SampleJobFolder.TODAY).accept(site.folder(), List.of(), yes));
    }
}
