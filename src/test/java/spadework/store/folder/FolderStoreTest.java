// SPDX-License-Identifier: Apache-2.0
package spadework.store.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.disk.FullDisk;
import spadework.store.FolderChange;
import spadework.store.Store;
import spadework.store.StoreContract;
import spadework.store.StoreFailure;
import spadework.store.StoredFolder;

/** An office in folders does what every home does. */
class FolderStoreTest extends StoreContract {
    @TempDir
    private Path root;

    @Override
    protected Store empty() {
        return new FolderStore(root);
    }

    @Override
    protected Store again() {
        return new FolderStore(root);
    }

    @Test
    void fullDiskIsToldAndARegisterNeverSaysMoreThanThereIs() throws IOException {
        StoredFolder before = StoredFolder.empty("j");
        FolderChange change = new FolderChange(
                before,
                Map.of(
                        "job.json", "{}".getBytes(StandardCharsets.UTF_8),
                        "for-the-homeowner/proposal.pdf", new byte[100],
                        "register.jsonl",
                                Files.readAllBytes(Path.of("sample-quotes/added-wall-then-closed/register.jsonl"))),
                Set.of());
        int operations;
        try (FullDisk never = FullDisk.from(Integer.MAX_VALUE)) {
            new FolderStore(root.resolve("roomy")).write(change);
            operations = never.operations();
        }
        for (int from = 1; from <= operations; from++) {
            Store store = new FolderStore(root.resolve("full-" + from));
            try (FullDisk full = FullDisk.from(from)) {
                assertThatThrownBy(() -> store.write(change))
                        .as("full from operation " + from)
                        .isInstanceOf(StoreFailure.class)
                        .hasMessageContaining("The disk of the office at " + store.called() + " is full");
            }
            StoredFolder there = store.folder("j");
            if (there.file("register.jsonl").isPresent()) {
                assertThat(there.files()).as("the register comes last").hasSize(3);
            }
            store.write(new FolderChange(there, change.written(), Set.of()));
            assertThat(store.folder("j").files()).hasSize(3);
        }
    }

    @Test
    void numberThatWasNotedAndNeverWrittenIsNoGap() throws IOException {
        Store store = new FolderStore(root.resolve("office"));
        FolderChange first = new FolderChange(
                StoredFolder.empty("2026-001"),
                Map.of("job.json", "{\"number\": \"2026-001\"}".getBytes(StandardCharsets.UTF_8)),
                Set.of());
        int from = 1;
        while (store.folder("2026-001").files().isEmpty()) {
            try (FullDisk full = FullDisk.from(from)) {
                store.write(first);
            } catch (StoreFailure full) {
                assertThat(full.why()).isEqualTo(StoreFailure.Why.FULL);
                assertThat(store.lastNumber(2026))
                        .as("full from operation " + from)
                        .isZero();
            }
            from++;
        }
        assertThat(from).isGreaterThan(4);
        assertThat(store.lastNumber(2026)).isEqualTo(1);
        assertThat(new FolderStore(root.resolve("office")).lastNumber(2026)).isEqualTo(1);
    }
}
