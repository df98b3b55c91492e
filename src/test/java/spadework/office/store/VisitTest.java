// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.draft.Draft;
import spadework.register.Event;
import spadework.register.Register;
import spadework.store.FolderChange;
import spadework.store.RegisterGrowth;
import spadework.store.Store;
import spadework.store.StoredFolder;
import spadework.store.folder.FolderStore;
import spadework.store.postgres.OfficeServer;
import spadework.store.postgres.PostgresStore;

/** A job goes along on a visit without signal, and what was changed on both sides comes together. */
class VisitTest {
    private static final String JOB = "block-basement-to-swale";

    @TempDir
    private Path folder;

    private static final LocalDate DAY = LocalDate.of(2026, 8, 10);

    private Store office;
    private Visit visit;
    private Path along;
    private Path job;

    @BeforeEach
    void take() throws IOException {
        office = PostgresStore.open(OfficeServer.office(), "office.json");
        try (Store samples = new FolderStore(Path.of("sample-quotes"))) {
            for (String name : new String[] {StoredFolder.FIRM, JOB}) {
                StoredFolder there = samples.folder(name);
                Map<String, byte[]> files = new TreeMap<>();
                for (var file : there.files()) {
                    files.put(file.path(), samples.content(name, file));
                }
                office.write(new FolderChange(office.folder(name), files, Set.of()));
            }
        }
        visit = new Visit(office);
        along = folder.resolve("visit");
        job = visit.take(JOB, along).resolve("job.json");
    }

    @AfterEach
    void close() {
        office.close();
    }

    @Test
    void whatOneSideChangedIsPutTogether() throws IOException {
        mine(draft -> draft.typed("/walls/0/length", "44 ft").typed("/title", "Measured again"));
        theirs(draft -> draft.typed("/customer/phone", "(614) 555-0199").typed("/walls/1/length", "27 ft"));
        assertThat(visit.bring(along, Visit.Side.NEITHER).done()).isTrue();
        Draft whole = inOffice();
        assertThat(whole.shown("/walls/0/length")).isEqualTo("44 ft");
        assertThat(whole.shown("/walls/1/length")).isEqualTo("27 ft");
        assertThat(whole.shown("/title")).isEqualTo("Measured again");
        assertThat(whole.shown("/customer/phone")).isEqualTo("(614) 555-0199");
    }

    @Test
    void aFieldThatBothChangedIsShownAndNothingIsWritten() throws IOException {
        mine(draft -> draft.typed("/walls/0/length", "44 ft"));
        theirs(draft -> draft.typed("/walls/0/length", "43 ft"));
        Visit.Brought brought = visit.bring(along, Visit.Side.NEITHER);
        assertThat(brought.done()).isFalse();
        assertThat(brought.clashes())
                .containsExactly("/walls/A/length was \"42 ft\". The visit made it \"44 ft\", the office \"43 ft\".");
        assertThat(inOffice().shown("/walls/0/length")).isEqualTo("43 ft");
        assertThat(visit.bring(along, Visit.Side.MINE).done()).isTrue();
        assertThat(inOffice().shown("/walls/0/length")).isEqualTo("44 ft");
    }

    @Test
    void theirSideIsTakenWhereThatIsAskedFor() throws IOException {
        mine(draft -> draft.typed("/walls/0/length", "44 ft").typed("/title", "Measured again"));
        theirs(draft -> draft.typed("/walls/0/length", "43 ft"));
        assertThat(visit.bring(along, Visit.Side.THEIRS).done()).isTrue();
        assertThat(inOffice().shown("/walls/0/length")).isEqualTo("43 ft");
        assertThat(inOffice().shown("/title")).isEqualTo("Measured again");
    }

    @Test
    void aPictureOfTheVisitComesAlong() throws IOException {
        Files.copy(job.resolveSibling("wet-joint.jpg"), job.resolveSibling("wet-corner.jpg"));
        assertThat(visit.bring(along, Visit.Side.NEITHER).done()).isTrue();
        assertThat(office.folder(JOB).file("wet-corner.jpg")).isPresent();
    }

    @Test
    void aJobIsBroughtBackOnce() throws IOException {
        visit.bring(along, Visit.Side.NEITHER);
        assertThatThrownBy(() -> visit.bring(along, Visit.Side.NEITHER))
                .hasMessageContaining("Nothing was taken along to");
    }

    @Test
    void nothingIsTakenIntoAFolderThatHoldsSomething() {
        assertThatThrownBy(() -> visit.take(JOB, along)).hasMessageContaining("Something lies in");
        assertThatThrownBy(() -> visit.take("nothing", folder.resolve("new")))
                .hasMessageContaining("The office has no job nothing");
    }

    @Test
    void stepsOfTheOfficeAndMeasuresOfTheVisitArePutTogether() throws IOException {
        mine(draft -> draft.typed("/walls/0/length", "44 ft"));
        register(new WorkingFolder(office, folder.resolve("desk")), "change order 1 issued");
        assertThat(visit.bring(along, Visit.Side.NEITHER).done()).isTrue();
        assertThat(inOffice().shown("/walls/0/length")).isEqualTo("44 ft");
        assertThat(lines()).hasSize(1);
    }

    @Test
    void stepOfTheVisitIsRegisteredInTheOffice() throws IOException {
        Register.of(job.getParent()).append(DAY, Event.NOTE, Map.of("text", "signed at the table"));
        theirs(draft -> draft.typed("/customer/phone", "(614) 555-0199"));
        assertThat(visit.bring(along, Visit.Side.NEITHER).done()).isTrue();
        assertThat(lines()).singleElement().asString().contains("signed at the table");
        assertThat(inOffice().shown("/customer/phone")).isEqualTo("(614) 555-0199");
    }

    @ParameterizedTest
    @EnumSource(Visit.Side.class)
    void twoRegistersThatWentOnFromOneLineAreNeverOne(Visit.Side side) throws IOException {
        mine(draft -> draft.typed("/walls/0/length", "44 ft"));
        Register.of(job.getParent()).append(DAY, Event.NOTE, Map.of("text", "on the visit"));
        register(new WorkingFolder(office, folder.resolve("desk")), "in the office");
        StoredFolder before = office.folder(JOB);
        Visit.Brought brought = visit.bring(along, side);
        assertThat(brought.done()).isFalse();
        assertThat(brought.clashes()).singleElement().asString().contains("a register goes on in one way only");
        assertThat(office.folder(JOB)).isEqualTo(before);
        assertThat(job).exists();
    }

    private void register(WorkingFolder desk, String text) throws IOException {
        desk.step(JOB, there -> Register.of(there).append(DAY, Event.NOTE, Map.of("text", text)));
    }

    private List<String> lines() throws IOException {
        StoredFolder now = office.folder(JOB);
        return RegisterGrowth.lines(
                office.content(JOB, now.file("register.jsonl").orElseThrow()));
    }

    private void mine(UnaryOperator<Draft> change) throws IOException {
        Files.writeString(
                job,
                change.apply(Draft.read(Files.readString(job)).orElseThrow()).text());
    }

    private void theirs(UnaryOperator<Draft> change) throws IOException {
        office.write(new FolderChange(
                office.folder(JOB),
                Map.of("job.json", change.apply(inOffice()).text().getBytes(StandardCharsets.UTF_8)),
                Set.of()));
    }

    private Draft inOffice() throws IOException {
        StoredFolder now = office.folder(JOB);
        return Draft.read(new String(office.content(JOB, now.file("job.json").orElseThrow()), StandardCharsets.UTF_8))
                .orElseThrow();
    }
}
