// SPDX-License-Identifier: Apache-2.0
package spadework.cli.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import spadework.cli.option.OfficeOption;
import spadework.disk.SharedFile;
import spadework.office.store.OfficeFile;
import spadework.office.store.WorkingFolder;
import spadework.store.FolderMoved;
import spadework.store.Store;
import spadework.store.StoreFailure;
import spadework.store.StoreText;

/** A command on a job, taken in an office: the job comes from there, and what the command changed goes back. */
public final class OfficeRun {
    private static final String LOCK = "copies";

    private OfficeRun() {}

    /**
     * Runs a command line.
     *
     * @param command the command that was matched
     * @param run runs it
     * @return its exit code
     */
    public static int of(ParseResult command, Callable<Integer> run) throws Exception {
        Optional<JobGiven> job = JobGiven.to(command.commandSpec());
        Optional<Path> named = OfficeOption.of(command.commandSpec());
        Path office = named.orElse(Path.of(OfficeFile.NAME));
        boolean elsewhere = named.isPresent()
                || (Files.isRegularFile(office)
                        && job.isPresent()
                        && !Files.exists(job.get().path()));
        if (!elsewhere || command.commandSpec().userObject() instanceof OfficeCommand.InOffice) {
            return run.call();
        }
        if (job.isEmpty()) {
            throw new ParameterException(command.commandSpec().commandLine(), StoreText.of("run.nojob"));
        }
        OfficeFile file = OfficeFile.read(office, System.getenv("PGPASSWORD"));
        String name = job.get().path().toString().replace('\\', '/');
        Optional<Path> folders = file.folder();
        if (folders.isPresent()) {
            job.get().set(folders.get().resolve(name));
            return run.call();
        }
        try (Store store = file.open()) {
            if (store.folder(name).files().isEmpty()) {
                throw new IOException(StoreText.of("visit.unknown", name));
            }
            Path copies = copies(store);
            return SharedFile.alone(
                    copies.resolve(LOCK),
                    () -> new WorkingFolder(store, copies).step(name, folder -> {
                        job.get().set(folder);
                        return called(run);
                    }));
        }
    }

    /** Whether the message of a failure is a whole sentence already. */
    public static boolean isSaidByTheOffice(Throwable failure) {
        return failure instanceof StoreFailure
                || failure instanceof FolderMoved
                || failure instanceof OfficeFile.Unusable;
    }

    private static Path copies(Store store) throws IOException {
        String home = System.getProperty(
                "spadework.copies",
                Path.of(System.getProperty("user.home"), ".spadework", "copies").toString());
        Path copies = Path.of(home, store.called().replaceAll("[^A-Za-z0-9.-]+", "-"));
        Files.createDirectories(copies);
        return copies;
    }

    private static int called(Callable<Integer> run) throws IOException {
        try {
            return run.call();
        } catch (IOException | RuntimeException failed) {
            throw failed;
        } catch (Exception other) {
            throw new IOException(other);
        }
    }
}
