// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A home of an office in a dry run: it is read as it is, and what would be written to it is only noted. */
public final class NotedWrites implements Store {
    private final Store store;
    private final List<String> notes = new ArrayList<>();

    public NotedWrites(Store store) {
        this.store = store;
    }

    /** What would have been written, a line for each folder. */
    public List<String> notes() {
        return List.copyOf(notes);
    }

    @Override
    public StoredFolder write(FolderChange change) {
        List<String> paths = new ArrayList<>(change.written().keySet());
        paths.addAll(change.deleted());
        String name = change.name().equals(StoredFolder.FIRM) ? StoreText.of("firm") : change.name();
        notes.add(StoreText.of("dry.folder", name, String.join(", ", paths)));
        return change.made();
    }

    @Override
    public List<FolderHead> list() throws IOException {
        return store.list();
    }

    @Override
    public List<FolderHead> find(String words, int most) throws IOException {
        return store.find(words, most);
    }

    @Override
    public Map<String, String> versions(List<String> names) throws IOException {
        return store.versions(names);
    }

    @Override
    public int lastNumber(int year) throws IOException {
        return store.lastNumber(year);
    }

    @Override
    public StoredFolder folder(String name) throws IOException {
        return store.folder(name);
    }

    @Override
    public byte[] content(String name, StoredFile file) throws IOException {
        return store.content(name, file);
    }

    @Override
    public <T> T alone(String name, Work<T> work) throws IOException {
        return work.done();
    }

    @Override
    public List<FolderVersion> history(String name) throws IOException {
        return store.history(name);
    }

    @Override
    public void open(String name, String who) {
        // Nobody is told of a dry run.
    }

    @Override
    public void left(String name, String who) {
        // Nobody was told that it is open.
    }

    @Override
    public List<String> openTo(String name, String who) throws IOException {
        return store.openTo(name, who);
    }

    @Override
    public String called() {
        return store.called();
    }

    @Override
    public void close() {
        store.close();
    }
}
