// SPDX-License-Identifier: Apache-2.0
package spadework.store.folder;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import spadework.store.Store;
import spadework.store.StoreContract;

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
}
