// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spadework.draft.Draft;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.reason.SaidInFull;
import spadework.store.Store;
import spadework.store.StoreFailure;
import spadework.store.StoreText;
import spadework.store.folder.FolderStore;
import spadework.store.postgres.PostgresStore;
import spadework.store.postgres.Server;

/**
 * The file that names the home of an office: a folder, or a PostgreSQL server. It never holds a password: that comes
 * from {@code PGPASSWORD}, or from the password or service file that every program of PostgreSQL reads.
 */
public final class OfficeFile {
    /** Its usual name. */
    public static final String NAME = "office.json";

    private static final String PORT = "5432";
    private static final int LAST_PORT = 65_535;
    private static final Set<String> KNOWN =
            Set.of("$schema", "format", "folders", "host", "port", "database", "user", "tls", "service");
    private static final Set<String> TLS = Set.of("", "on", "off", "checked");
    private static final Set<String> SECRETS = Set.of("password", "passwd", "pwd", "secret");

    private final Path file;
    private final Draft draft;
    private final String password;

    private OfficeFile(Path file, Draft draft, String password) {
        this.file = file;
        this.draft = draft;
        this.password = password;
    }

    /** What is wrong with an office's file, all of it. */
    public static final class Unusable extends IOException implements SaidInFull {
        private static final long serialVersionUID = 1L;

        private final transient List<Fault> faults;

        private Unusable(List<Fault> faults) {
            super(String.join("\n", faults.stream().map(Fault::text).toList()));
            this.faults = List.copyOf(faults);
        }

        public List<Fault> faults() {
            return faults;
        }
    }

    /**
     * Reads an office's file.
     *
     * @param password what {@code PGPASSWORD} holds; null for nothing
     * @throws Unusable if it does not name a home
     */
    public static OfficeFile read(Path file, String password) throws IOException {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        Draft draft = Draft.read(text)
                .orElseThrow(() -> new Unusable(List.of(fault(file, "", "office.json.found", "office.json.allowed"))));
        OfficeFile office = new OfficeFile(file, draft, password == null ? "" : password);
        List<Fault> faults = office.faults();
        if (!faults.isEmpty()) {
            throw new Unusable(faults);
        }
        return office;
    }

    private List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        for (String key : draft.keys()) {
            if (SECRETS.contains(key)) {
                faults.add(fault(file, "/" + key, "office.password.found", "office.password.allowed"));
            } else if (!KNOWN.contains(key)) {
                faults.add(fault(file, "/" + key, "office.key.found", "office.key.allowed", key));
            }
        }
        boolean folders = !draft.shown("/folders").isEmpty();
        boolean server = !draft.shown("/host").isEmpty();
        if (folders == server) {
            faults.add(fault(file, "", folders ? "office.both.found" : "office.none.found", "office.home.allowed"));
        }
        if (server) {
            for (String key : List.of("database", "user")) {
                if (draft.shown("/" + key).isEmpty()) {
                    faults.add(fault(file, "/" + key, "office.missing.found", "office.missing.allowed", key));
                }
            }
            if (port().isEmpty()) {
                faults.add(fault(file, "/port", "office.port.found", "office.port.allowed", draft.shown("/port")));
            }
            if (!TLS.contains(draft.shown("/tls"))) {
                faults.add(fault(file, "/tls", "office.tls.found", "office.tls.allowed", draft.shown("/tls")));
            }
        }
        return faults;
    }

    private Optional<Integer> port() {
        String typed = draft.shown("/port").isEmpty() ? PORT : draft.shown("/port");
        return Optional.of(typed)
                .filter(port -> port.matches("[1-9]\\d{0,4}"))
                .map(Integer::valueOf)
                .filter(port -> port <= LAST_PORT);
    }

    private static Fault fault(Path file, String pointer, String found, String allowed, Object... about) {
        return new Fault(
                new Place(file.toString(), 0, 0, pointer),
                StoreText.of(found, about),
                StoreText.of(allowed, about),
                StoreText.of("office.fix"));
    }

    /**
     * Opens the home that it names. Nothing of a database is loaded for a folder.
     *
     * @throws spadework.store.StoreFailure if it cannot be reached, or does not let this account in
     */
    public Store open() throws IOException {
        return isServer() ? PostgresStore.open(server(), file.toString()) : new FolderStore(folders());
    }

    /**
     * Makes the home an office, or brings it up to this program.
     *
     * @return how many versions it went up
     */
    public int setUp() throws IOException {
        if (isServer()) {
            return PostgresStore.setUp(server());
        }
        Files.createDirectories(folders());
        return 0;
    }

    /**
     * Whether the home is an office already, with the tables of this program.
     *
     * @throws StoreFailure if that cannot be told
     */
    public boolean isSetUp() throws IOException {
        try (Store store = open()) {
            return isServer() || Files.isDirectory(Path.of(store.called()));
        } catch (StoreFailure unfit) {
            if (unfit.why() == StoreFailure.Why.NOT_SET_UP || unfit.why() == StoreFailure.Why.TOO_OLD) {
                return false;
            }
            throw unfit;
        }
    }

    /** The account by which the server is asked; empty for folders. */
    public String account() {
        return draft.shown("/user");
    }

    private boolean isServer() {
        return !draft.shown("/host").isEmpty();
    }

    /** The folder in which the jobs lie, if that is the home. */
    public Optional<Path> folder() {
        return isServer() ? Optional.empty() : Optional.of(folders());
    }

    private Path folders() {
        return file.toAbsolutePath().resolveSibling(draft.shown("/folders"));
    }

    private Server server() {
        return new Server(
                draft.shown("/host"),
                port().orElseThrow(),
                draft.shown("/database"),
                draft.shown("/user"),
                Optional.of(password).filter(word -> !word.isEmpty()),
                Server.Tls.of(draft.shown("/tls")),
                draft.shown("/service"));
    }
}
