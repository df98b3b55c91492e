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
import spadework.cli.option.OpensOffice;
import spadework.disk.OwnFolder;
import spadework.disk.SharedFile;
import spadework.office.store.OfficeFile;
import spadework.office.store.WorkingFolder;
import spadework.reason.SaidInFull;
import spadework.store.Store;
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
        PathGiven given = PathGiven.to(command.commandSpec());
        Optional<Path> named = OfficeOption.of(command.commandSpec());
        Path office = named.orElse(Path.of(OfficeFile.NAME));
        boolean elsewhere = named.isPresent()
                || (Files.isRegularFile(office) && given.kind() == PathGiven.Kind.JOB && !Files.exists(given.path()));
        if (!elsewhere || command.commandSpec().userObject() instanceof OpensOffice) {
            return run.call();
        }
        if (given.kind() == PathGiven.Kind.NONE) {
            throw new ParameterException(command.commandSpec().commandLine(), StoreText.of("run.nojob"));
        }
        if (given.path().isAbsolute() || given.path().normalize().startsWith("..")) {
            throw new ParameterException(
                    command.commandSpec().commandLine(), StoreText.of("run.elsewhere", given.path()));
        }
        OfficeFile file = OfficeFile.read(office, System.getenv("PGPASSWORD"));
        Optional<Path> folders = file.folder();
        if (folders.isPresent()) {
            given.in(folders.get());
            return run.call();
        }
        try (Store store = file.open()) {
            String name = given.name();
            Path copies = copies(store);
            WorkingFolder working = new WorkingFolder(store, copies);
            if (given.kind() == PathGiven.Kind.JOB) {
                working.checkJob(name);
            }
            return SharedFile.alone(
                    copies.resolve(LOCK),
                    () -> taken(working, given, name, () -> {
                        given.in(copies);
                        return called(run);
                    }));
        }
    }

    /** Something that is done once the copies are there. */
    private interface Taken {
        int done() throws IOException;
    }

    private static int taken(WorkingFolder copies, PathGiven given, String name, Taken run) throws IOException {
        return switch (given.kind()) {
            case FOLDER -> copies.overAll(root -> run.done());
            case BOOK -> copies.inFirm(root -> run.done());
            default -> {
                Optional<String> more = given.more();
                yield more.isEmpty()
                        ? copies.step(name, folder -> run.done())
                        : copies.step(name, folder -> copies.step(more.get(), other -> run.done()));
            }
        };
    }

    /** Whether the message of a failure is a whole sentence already. */
    public static boolean isSaidByTheOffice(Throwable failure) {
        return failure instanceof SaidInFull;
    }

    private static Path copies(Store store) throws IOException {
        Path copies = home().resolve(name(store));
        Files.createDirectories(copies);
        return copies;
    }

    /** Where the copies of a window lie: apart from those of commands, which come and go while it is open. */
    static OwnFolder ownCopies(Store store) throws IOException {
        Files.createDirectories(home());
        return OwnFolder.below(home(), name(store) + "-window");
    }

    private static Path home() {
        return Path.of(System.getProperty(
                "spadework.copies",
                Path.of(System.getProperty("user.home"), ".spadework", "copies").toString()));
    }

    private static String name(Store store) {
        return store.called().replaceAll("[^A-Za-z0-9.-]+", "-");
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
