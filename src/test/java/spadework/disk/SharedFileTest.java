// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharedFileTest {
    @TempDir
    Path folder;

    @Test
    void writesOverWhatWasReadAndNothingElse() throws IOException {
        Path file = Files.writeString(folder.resolve("job.json"), "one");
        Snapshot read = Snapshot.of(file);
        SharedFile.replace(file, read, bytes("two"));
        assertThatThrownBy(() -> SharedFile.replace(file, read, bytes("three")))
                .isInstanceOf(ChangedElsewhere.class)
                .hasMessageContaining("changed by another program since it was read");
        assertThat(file).hasContent("two");
    }

    @Test
    void fileThatIsNotThereIsMadeOnce() throws IOException {
        Path file = folder.resolve("company.json");
        SharedFile.replace(file, Snapshot.NONE, bytes("mine"));
        assertThatThrownBy(() -> SharedFile.replace(file, Snapshot.NONE, bytes("theirs")))
                .isInstanceOf(ChangedElsewhere.class);
        assertThat(file).hasContent("mine");
    }

    @Test
    void linkIsNotWrittenThrough() throws IOException {
        Path elsewhere = Files.writeString(folder.resolve("elsewhere"), "theirs");
        Path file = Files.createSymbolicLink(folder.resolve("job.json"), elsewhere);
        assertThatThrownBy(() -> SharedFile.replace(file, Snapshot.of(file), bytes("mine")))
                .hasMessageContaining("a link, which is not written through");
        assertThat(elsewhere).hasContent("theirs");
    }

    /** Eight threads count up; a count that is lost would show in the sum. */
    @Test
    void threadsOfOneProgramLoseNothing() throws Exception {
        Path file = Files.writeString(folder.resolve("count"), "0");
        together(8, () -> {
            for (int i = 0; i < 25; i++) {
                SharedFile.alone(file, () -> {
                    Snapshot now = Snapshot.of(file);
                    int count = Integer.parseInt(now.text().orElseThrow());
                    SharedFile.replace(file, now, bytes(Integer.toString(count + 1)));
                    return count;
                });
            }
            return null;
        });
        assertThat(file).hasContent("200");
    }

    /** A copy by hard links shares the lock file, which the system locks for the whole program at once. */
    @Test
    void foldersThatAreHardLinkedCopiesOfEachOtherWaitForEachOther() throws Exception {
        Path one = Files.createDirectory(folder.resolve("one"));
        Path two = Files.createDirectory(folder.resolve("two"));
        Files.writeString(one.resolve("count"), "0");
        Files.writeString(two.resolve("count"), "0");
        Files.createFile(one.resolve(SharedFile.LOCK));
        Files.createLink(two.resolve(SharedFile.LOCK), one.resolve(SharedFile.LOCK));
        together(8, () -> {
            for (Path each : List.of(one, two)) {
                SharedFile.alone(each.resolve("count"), () -> {
                    Snapshot now = Snapshot.of(each.resolve("count"));
                    int count = Integer.parseInt(now.text().orElseThrow());
                    SharedFile.replace(each.resolve("count"), now, bytes(Integer.toString(count + 1)));
                    return count;
                });
            }
            return null;
        });
        assertThat(one.resolve("count")).hasContent("8");
        assertThat(two.resolve("count")).hasContent("8");
    }

    @Test
    void lockThatOverlapsOneOfThisProgramIsWaitedForAndThenTold() throws IOException {
        Path file = Files.writeString(folder.resolve("job.json"), "one");
        System.setProperty("spadework.lockSeconds", "1");
        try (FileChannel other = FileChannel.open(
                        folder.resolve(SharedFile.LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                var lock = other.lock()) {
            assertThat(lock.isValid()).isTrue();
            assertThatThrownBy(() -> SharedFile.replace(file, Snapshot.of(file), bytes("two")))
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("held by another program for 1 seconds");
        } finally {
            System.clearProperty("spadework.lockSeconds");
        }
        SharedFile.replace(file, Snapshot.of(file), bytes("two"));
        assertThat(file).as("a lock file that was left means nothing").hasContent("two");
    }

    @Test
    void lockThatIsNoFileIsTold() throws IOException {
        Path file = Files.writeString(folder.resolve("job.json"), "one");
        Files.createDirectory(folder.resolve(SharedFile.LOCK));
        assertThatThrownBy(() -> SharedFile.replace(file, Snapshot.of(file), bytes("two")))
                .hasMessageContaining("take it away");
    }

    @Test
    void fileOutsideOfItsFolderIsNotReached() throws IOException {
        Path job = Files.createDirectory(folder.resolve("job"));
        Path outside = Files.writeString(folder.resolve("secret"), "x");
        Files.createSymbolicLink(job.resolve("photo.jpg"), outside);
        Files.createSymbolicLink(job.resolve("kept"), folder);
        assertThatThrownBy(() -> InsideFolder.existing(job, "photo.jpg")).hasMessageContaining("leads out");
        assertThatThrownBy(() -> InsideFolder.existing(job, "../secret")).hasMessageContaining("leads out");
        assertThatThrownBy(() -> InsideFolder.writable(job, "kept/new.json")).hasMessageContaining("leads out");
        assertThat(InsideFolder.isFile(job, "photo.jpg")).isFalse();
        Files.createSymbolicLink(job.resolve("same.jpg"), Files.writeString(job.resolve("real.jpg"), "x"));
        assertThat(InsideFolder.isFile(job, "same.jpg"))
                .as("a link inside the folder is followed")
                .isTrue();
    }

    @Test
    void deathAtAnyOperationLeavesTheOldFileOrTheNew() throws IOException {
        Path file = folder.resolve("job.json");
        int operations;
        Files.writeString(file, "older");
        SharedFile.replace(file, Snapshot.of(file), bytes("old"));
        try (DyingDisk disk = DyingDisk.at(0, DyingDisk.Manner.BEFORE)) {
            SharedFile.replace(file, Snapshot.of(file), bytes("new"));
            operations = disk.operations();
        }
        assertThat(operations)
                .as("create, write, force, move, force the folder")
                .isGreaterThanOrEqualTo(5);
        for (DyingDisk.Manner manner : DyingDisk.Manner.values()) {
            for (int at = 1; at <= operations; at++) {
                Files.writeString(file, "old");
                try (DyingDisk disk = DyingDisk.at(at, manner)) {
                    assertThatThrownBy(() -> SharedFile.replace(file, Snapshot.of(file), bytes("new")))
                            .isInstanceOf(DyingDisk.Death.class);
                    assertThat(disk.operations()).isEqualTo(at);
                }
                assertThat(Files.readString(file)).isIn("old", "new");
                SharedFile.replace(file, Snapshot.of(file), bytes("after"));
                assertThat(file).hasContent("after");
            }
        }
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.filter(path -> !path.getFileName().toString().startsWith(".")))
                    .containsExactly(file);
        }
    }

    private static void together(int threads, Callable<?> work) throws Exception {
        ExecutorService all = Executors.newFixedThreadPool(threads);
        List<Future<?>> running = new ArrayList<>();
        for (int i = 0; i < threads; i++) {
            running.add(all.submit(work));
        }
        for (Future<?> each : running) {
            each.get();
        }
        all.shutdown();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
