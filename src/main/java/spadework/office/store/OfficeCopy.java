// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import spadework.store.FileKind;
import spadework.store.FolderChange;
import spadework.store.FolderHead;
import spadework.store.RegisterGrowth;
import spadework.store.Store;
import spadework.store.StoreFailure;
import spadework.store.StoreText;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;

/** Copies an office from one home into another, folder by folder, without loss; again and again, if need be. */
public final class OfficeCopy {
    private final Store from;
    private final Store to;
    private final boolean over;

    /** @param over whether folders that say something else at their new home are written over; a register never is */
    public OfficeCopy(Store from, Store to, boolean over) {
        this.from = from;
        this.to = to;
        this.over = over;
    }

    /**
     * What came of it.
     *
     * @param copied folders that were written
     * @param same folders that were the same already
     * @param left why a folder was left as it is, a sentence each
     */
    public record Copied(int copied, int same, List<String> left) {
        public Copied {
            left = List.copyOf(left);
        }
    }

    /**
     * Copies all of it.
     *
     * @param progress is told how many folders are done, and of how many
     */
    public Copied all(BiConsumer<Integer, Integer> progress) throws IOException {
        List<String> names = new ArrayList<>(List.of(StoredFolder.FIRM));
        from.list().stream().map(FolderHead::name).forEach(names::add);
        int copied = 0;
        int same = 0;
        List<String> left = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            StoredFolder source = from.folder(names.get(i));
            StoredFolder target = to.folder(names.get(i));
            if (source.version().equals(target.version())) {
                same++;
            } else if (!over && isOtherwise(source, target)) {
                left.add(StoreText.of("copy.otherwise", called(source), String.join(", ", source.differing(target))));
            } else {
                copied += copy(source, target, left) ? 1 : 0;
            }
            progress.accept(i + 1, names.size());
        }
        return new Copied(copied, same, left);
    }

    /** Whether the target says something that the source does not: more than an earlier copy that broke off. */
    private static boolean isOtherwise(StoredFolder source, StoredFolder target) {
        return target.files().stream()
                .anyMatch(file -> !source.file(file.path()).equals(Optional.of(file)));
    }

    private boolean copy(StoredFolder source, StoredFolder target, List<String> left) throws IOException {
        Map<String, byte[]> written = new TreeMap<>();
        Set<String> deleted = new HashSet<>();
        for (String path : source.differing(target)) {
            StoredFile file = source.file(path).orElse(null);
            if (file == null) {
                deleted.add(path);
            } else {
                written.put(path, from.content(source.name(), file));
            }
        }
        byte[] chain = written.get(FileKind.CHAIN);
        if (chain != null && !Arrays.equals(RegisterGrowth.file(RegisterGrowth.lines(chain)), chain)) {
            left.add(StoreText.of("copy.half", called(source)));
            return false;
        }
        try {
            to.write(new FolderChange(target, written, deleted));
            return true;
        } catch (StoreFailure cut) {
            if (cut.why() != StoreFailure.Why.REGISTER_CUT) {
                throw cut;
            }
            left.add(cut.getMessage());
            return false;
        }
    }

    private static String called(StoredFolder folder) {
        return folder.name().equals(StoredFolder.FIRM) ? StoreText.of("firm") : folder.name();
    }
}
