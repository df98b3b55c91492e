// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import java.io.IOException;
import spadework.store.Store;
import spadework.store.StoreContract;

/** An office on PostgreSQL does what every home does. */
class PostgresStoreTest extends StoreContract {
    private Server server;

    @Override
    protected Store empty() throws IOException {
        server = OfficeServer.office();
        return again();
    }

    @Override
    protected Store again() throws IOException {
        return PostgresStore.open(server, "office.json");
    }
}
