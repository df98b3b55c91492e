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

/** The job of the cheats at each stage of an agreement; each is made once, and copied by whoever spoils it. */
final class CheatStages {
    static final Office OFFICE = Office.with(TemplateFolder.NONE);

    private static final Map<Stage, Jobsite> SITES = new EnumMap<>(Stage.class);

    private CheatStages() {}

    /** How far a job has come. */
    enum Stage {
        DRAFT,
        ISSUED,
        SIGNED,
        CHANGED,
        BUILT,
        CLOSED
    }

    static synchronized Jobsite at(Stage stage) throws IOException {
        if (SITES.isEmpty()) {
            Path prepared = Files.createTempDirectory("cheats");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(prepared)));
            prepare(prepared);
        }
        return SITES.get(stage);
    }

    private static void prepare(Path prepared) throws IOException {
        Jobsite site = Jobsite.in(Files.createDirectory(prepared.resolve("job")));
        SITES.put(Stage.DRAFT, site.copy(prepared.resolve("draft")));
        CheatCase.done(new Issuing(OFFICE, Jobsite.TODAY).issue(site.folder()));
        SITES.put(Stage.ISSUED, site.copy(prepared.resolve("issued")));
        CheatCase.done(new Accepting(OFFICE, Jobsite.TODAY).accept(site.folder(), List.of("OP1"), Jobsite.yes()));
        SITES.put(Stage.SIGNED, site.copy(prepared.resolve("signed")));
        site.addChange(1);
        site.addChange(2);
        CheatCase.done(CheatCase.decide(site, 1, true, Jobsite.on("2026-09-13")));
        SITES.put(Stage.CHANGED, site.copy(prepared.resolve("changed")));
        CheatCase.done(CheatCase.decide(site, 2, false, SignatureInput.none(LocalDate.parse("2026-09-14"))));
        Dollars total = ((Bid) OFFICE.bid(site.folder())).dossier().contract().total();
        site.finish(List.of("A", "B", "C", "W1"), total.text());
        SITES.put(Stage.BUILT, site.copy(prepared.resolve("built")));
        CheatCase.done(CheatCase.close(site, "2026-10-01", CheatCase.WORK_ENDED, Optional.empty()));
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
