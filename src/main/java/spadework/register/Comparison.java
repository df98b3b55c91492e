// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import spadework.finding.Fault;

/** Compares the documents with the lines that name them, as the lines are read. */
final class Comparison implements Consumer<Entry> {
    private final Documents documents;
    private final Set<String> unregistered;
    private final List<Fault> faults = new ArrayList<>();
    private int compared;

    Comparison(Documents documents) throws IOException {
        this.documents = documents;
        this.unregistered = new TreeSet<>(documents.lying());
    }

    @Override
    public void accept(Entry entry) {
        for (RegisteredFile file : entry.files()) {
            compared++;
            unregistered.remove(file.name());
            try {
                documents.compare(entry, file).ifPresent(faults::add);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }

    List<Fault> faults() {
        return faults;
    }

    int documents() {
        return compared;
    }

    /** Files that lie there and that no line names. */
    Set<String> unregistered() {
        return unregistered;
    }
}
