// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Jobs at home in folders: what is written there is all there is. */
final class PlainFolders implements JobsHome {
    private final Path tree;

    /** @param tree the folder of all jobs; null where they lie anywhere */
    PlainFolders(Path tree) {
        this.tree = tree;
    }

    @Override
    public Optional<Path> tree() {
        return Optional.ofNullable(tree);
    }

    @Override
    public String called() {
        return "";
    }

    @Override
    public Path begin(String job, int year) {
        throw new UnsupportedOperationException("a job in a folder begins with its first saving");
    }

    @Override
    public List<FoundJob> found(String words, int most) {
        throw new UnsupportedOperationException("folders are searched by reading them");
    }

    @Override
    public void refresh(Path job) {
        // The folder is the job.
    }

    @Override
    public void refreshAll(Path folder) {
        // The folders are the jobs.
    }

    @Override
    public JobFile.Saved save(JobFile file, String text) throws IOException {
        return file.save(text);
    }

    @Override
    public <T> T step(Path job, Work<T> work) throws IOException {
        return work.done();
    }

    @Override
    public boolean isShared(Path place) {
        return false;
    }

    @Override
    public String books() {
        return "";
    }

    @Override
    public List<String> others(Path job) {
        return List.of();
    }

    @Override
    public void left(Path job) {
        // Nobody was told that it is open.
    }
}
