// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.disk.DyingDisk;
import spadework.draft.Draft;
import spadework.intake.Intake;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Canceling;
import spadework.office.agreement.Closing;
import spadework.office.agreement.Deciding;
import spadework.office.agreement.Issuing;
import spadework.office.book.BookService;
import spadework.office.files.JobFile;
import spadework.office.portfolio.Copying;
import spadework.office.reply.TemplateFolder;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Register;

/**
 * The program dies at each operation on the disk while it takes a step of the agreement, changes the price book, saves
 * or copies a job; then it is asked again. With {@code -Dspadework.everyKill=true} at each in each manner, otherwise at
 * some of those that print papers.
 */
class KilledAtEveryStepTest {
    private static final boolean ALL = Boolean.getBoolean("spadework.everyKill");
    private static final LocalDate DAY = LocalDate.of(2026, 10, 1);

    @TempDir
    private Path root;

    private final Office office = Office.with(TemplateFolder.NONE);
    private int folders;

    /** A step, from nothing done to all done. */
    @FunctionalInterface
    private interface Step {
        void on(Path shop) throws IOException;
    }

    /** What holds once the step is done. */
    @FunctionalInterface
    private interface Held {
        void by(Path shop) throws IOException;
    }

    @Test
    void stepsOfTheAgreement() throws IOException {
        Path drawn = Files.createDirectory(root.resolve("shop"));
        SampleJobFolder site = SampleJobFolder.in(drawn);
        String name = site.folder().getFileName().toString();
        int deaths = kill(
                drawn,
                shop -> new Issuing(office, DAY).issue(shop.resolve(name)),
                once(name, Event.PROPOSAL_ISSUED),
                ALL);
        new Issuing(office, DAY).issue(site.folder());
        deaths += kill(
                drawn,
                shop -> new Accepting(office, DAY)
                        .accept(shop.resolve(name), List.of("OP1"), SampleJobFolder.by("2026-08-20", "Ida Wrenfield")),
                once(name, Event.SIGNATURE_RECEIVED),
                ALL);
        deaths += kill(
                drawn,
                shop -> new Accepting(office, DAY).accept(shop.resolve(name), List.of("OP1"), SampleJobFolder.yes()),
                once(name, Event.CONTRACT_SIGNED),
                ALL);
        new Accepting(office, DAY).accept(site.folder(), List.of("OP1"), SampleJobFolder.yes());
        deaths += kill(
                drawn,
                shop -> new Canceling(office, DAY)
                        .cancel(
                                shop.resolve(name),
                                new Canceling.NoticeInput(
                                        List.of("Ida Wrenfield"),
                                        Optional.empty(),
                                        LocalDate.parse("2026-08-21"),
                                        Optional.empty(),
                                        Optional.empty())),
                once(name, Event.CONTRACT_CANCELED),
                ALL);
        site.addChange(1);
        deaths += kill(
                drawn,
                shop -> new Deciding(office, DAY).decide(shop.resolve(name), 1, true, SampleJobFolder.on("2026-09-13")),
                once(name, Event.CHANGE_ORDER_ACCEPTED),
                ALL);
        new Deciding(office, DAY).decide(site.folder(), 1, true, SampleJobFolder.on("2026-09-13"));
        Bid bid = (Bid) office.bid(site.folder());
        site.finish(
                List.of("A", "B", "C", "W1"), bid.dossier().contract().total().text());
        deaths += kill(
                drawn,
                shop -> new Closing(office, DAY)
                        .close(shop.resolve(name), new Closing.Asked(DAY, Optional.empty(), Optional.empty())),
                once(name, Event.CERTIFICATE_ISSUED),
                ALL);
        System.out.println("steps of the agreement: " + deaths + " deaths");
        assertThat(deaths).isGreaterThan(ALL ? 300 : 15);
    }

    @Test
    void filesThatProgramsShare() throws IOException {
        Path shop = Files.createDirectory(root.resolve("shop"));
        SampleJobFolder site = SampleJobFolder.in(shop);
        String name = site.folder().getFileName().toString();
        int deaths = kill(
                shop,
                each -> BookService.at(each.resolve("price-book.json"))
                        .change("STONE-MACH", Map.of("material/cost", "$33.00"), DAY, "list"),
                each -> {
                    String book = Files.readString(each.resolve("price-book.json"));
                    assertThat(book).contains("\"$33.00\"");
                    assertThat(new Intake()
                                    .readBook(book, each.resolve("price-book.json"))
                                    .faults())
                            .isEmpty();
                },
                true);
        deaths += kill(
                shop,
                each -> {
                    JobFile file = JobFile.at(each.resolve(name).resolve("job.json"));
                    Draft draft = Draft.read(file.text().orElseThrow()).orElseThrow();
                    file.keepAside(draft.typed("/title", "Mine").text());
                    assertThat(file.save(draft.typed("/title", "Mine").text())).isEqualTo(JobFile.Saved.DONE);
                },
                each -> assertThat(Files.readString(each.resolve(name).resolve("job.json")))
                        .contains("\"Mine\""),
                true);
        deaths += kill(
                shop,
                each -> Copying.copy(
                        each.resolve(name),
                        each.resolve("new"),
                        "2026-999",
                        "Juniper Ostrand",
                        DAY,
                        EnumSet.allOf(Copying.Take.class)),
                each -> assertThat(Files.readString(each.resolve("new/job.json")))
                        .contains("\"2026-999\""),
                true);
        System.out.println("files that programs share: " + deaths + " deaths");
        assertThat(deaths).isGreaterThan(60);
    }

    private int kill(Path drawn, Step step, Held held, boolean all) throws IOException {
        int operations;
        try (DyingDisk disk = DyingDisk.at(0, DyingDisk.Manner.BEFORE)) {
            step.on(copy(drawn));
            operations = disk.operations();
        }
        int deaths = 0;
        for (DyingDisk.Manner manner :
                all ? DyingDisk.Manner.values() : new DyingDisk.Manner[] {DyingDisk.Manner.HALF}) {
            for (int at = 1; at <= operations; at += all ? 1 : 7) {
                Path shop = copy(drawn);
                try (DyingDisk disk = DyingDisk.at(at, manner)) {
                    assertThatThrownBy(() -> step.on(shop))
                            .as("operation %d, %s", at, manner)
                            .isInstanceOf(DyingDisk.Death.class);
                    assertThat(disk.operations()).isEqualTo(at);
                }
                deaths++;
                step.on(shop);
                held.by(shop);
            }
        }
        return deaths;
    }

    private static Held once(String name, Event event) {
        return shop -> {
            Register register = Register.of(shop.resolve(name));
            assertThat(register.check().faults()).isEmpty();
            List<Entry> entries = register.entries();
            assertThat(entries.stream().filter(entry -> entry.event() == event)).hasSize(1);
            List<String> taken = entries.stream()
                    .filter(entry -> entry.event() == Event.NUMBER_TAKEN)
                    .map(entry -> entry.number().orElseThrow().text())
                    .toList();
            assertThat(taken).doesNotHaveDuplicates();
            String job = Files.readString(shop.resolve(name).resolve("job.json"));
            assertThat(Draft.read(job)).isPresent();
            switch (event) {
                case CONTRACT_SIGNED -> assertThat(job).contains("\"accepted\"");
                case CERTIFICATE_ISSUED -> assertThat(job).contains("\"closed\"");
                case CHANGE_ORDER_ACCEPTED -> assertThat(job).contains("\"state\"", "\"decision\"");
                default -> assertThat(job).contains("\"signing\"");
            }
        };
    }

    private Path copy(Path drawn) throws IOException {
        Path copy = root.resolve("copy" + folders++);
        try (Stream<Path> files = Files.walk(drawn)) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.resolve(drawn.relativize(file).toString()));
            }
        }
        return copy;
    }
}
