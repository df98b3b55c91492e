// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.money.Dollars;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Issuing;
import spadework.office.agreement.SignatureInput;
import spadework.office.reply.TemplateFolder;

/** The job of the misuses at each stage of an agreement; each is made once, and copied by whoever spoils it. */
public final class MisuseStages {
    static final Office OFFICE = Office.with(TemplateFolder.NONE);

    private static final Map<Stage, SampleJobFolder> SITES = new EnumMap<>(Stage.class);

    private MisuseStages() {}

    /** How far a job has come. */
    public enum Stage {
        DRAFT,
        ISSUED,
        SIGNED,
        CHANGED,
        BUILT,
        CLOSED
    }

    public static synchronized SampleJobFolder at(Stage stage) throws IOException {
        if (SITES.isEmpty()) {
            Path prepared = Files.createTempDirectory("misuses");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(prepared)));
            prepare(prepared);
        }
        return SITES.get(stage);
    }

    private static void prepare(Path prepared) throws IOException {
        SampleJobFolder site = SampleJobFolder.in(Files.createDirectory(prepared.resolve("job")));
        SITES.put(Stage.DRAFT, site.copy(prepared.resolve("draft")));
        MisuseCase.done(new Issuing(OFFICE, SampleJobFolder.TODAY).issue(site.folder()));
        SITES.put(Stage.ISSUED, site.copy(prepared.resolve("issued")));
        MisuseCase.done(new Accepting(OFFICE, SampleJobFolder.TODAY)
                .accept(site.folder(), List.of("OP1"), SampleJobFolder.yes()));
        SITES.put(Stage.SIGNED, site.copy(prepared.resolve("signed")));
        site.addChange(1);
        site.addChange(2);
        MisuseCase.done(MisuseCase.decide(site, 1, true, SampleJobFolder.on("2026-09-13")));
        SITES.put(Stage.CHANGED, site.copy(prepared.resolve("changed")));
        MisuseCase.done(MisuseCase.decide(site, 2, false, SignatureInput.none(LocalDate.parse("2026-09-14"))));
        Dollars total = ((Bid) OFFICE.bid(site.folder())).dossier().contract().total();
        site.finish(List.of("A", "B", "C", "W1"), total.text());
        SITES.put(Stage.BUILT, site.copy(prepared.resolve("built")));
        MisuseCase.done(MisuseCase.close(site, "2026-10-01", MisuseCase.WORK_ENDED, Optional.empty()));
        SITES.put(Stage.CLOSED, site.copy(prepared.resolve("closed")));
    }

    private static void remove(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
