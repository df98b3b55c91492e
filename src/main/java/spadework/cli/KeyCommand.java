// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ExitCode;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.press.signing.SelfMadeKey;
import spadework.press.signing.SigningKey;

/** The key with which issued papers are signed. */
@Command(
        name = "key",
        description = {
            "Make or show the key with which issued PDFs are signed.",
            "A key of a certificate office is a file in PKCS #12; name it in SPADEWORK_KEY and its password in"
                    + " SPADEWORK_KEY_PASSWORD."
        },
        subcommands = {KeyCommand.Make.class, KeyCommand.Show.class},
        synopsisSubcommandLabel = "COMMAND",
        footerHeading = "%nExample:%n",
        footer = "  spadework key make --name \"Fennimarsh Groundworks\"")
final class KeyCommand {
    private static final String SELF_MADE =
            "It is self-made: a PDF reader shows with it that a paper is unaltered, and that nobody else vouches for"
                    + " who signed it.";

    /** Where the key lies when nobody says otherwise. */
    static Path usual() {
        return Path.of(System.getProperty("user.home"), ".spadework", "signing-key.p12");
    }

    private static Path place() {
        String named = System.getProperty(SigningKey.FILE, "");
        return named.isEmpty() ? usual() : Path.of(named);
    }

    /** Makes a key. */
    @Command(
            name = "make",
            description = "Make a key of your own. One that is there is never written over.",
            footerHeading = "%nExample:%n",
            footer = "  spadework key make --name \"Fennimarsh Groundworks\"")
    static final class Make implements Callable<Integer> {
        @Option(names = "--name", required = true, paramLabel = "NAME", description = "Your firm, as its papers say.")
        private String name;

        @Option(names = "--out", paramLabel = "FILE", description = "Where it goes (default: where it is looked for).")
        private Path out;

        @Mixin
        DryRunOption dryRun;

        @Spec
        private CommandSpec spec;

        @Override
        public Integer call() throws IOException {
            Path file = (out == null ? place() : out).toAbsolutePath();
            if (Files.exists(file)) {
                spec.commandLine()
                        .getErr()
                        .println(file + " is there already; papers were signed with it. Move it away first.");
                return ExitCode.REFUSED;
            }
            Disk.folders(file.getParent());
            AtomicFile.write(
                    file, SelfMadeKey.file(name, LocalDate.now(), System.getProperty(SigningKey.PASSWORD, "")));
            if (Files.exists(file)
                    && file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
                Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
            }
            spec.commandLine().getOut().println(file + ": key of " + name + ". " + SELF_MADE);
            spec.commandLine()
                    .getOut()
                    .println("Keep a copy of it where nobody else comes; whoever has it can sign as you.");
            return ExitCode.DONE;
        }
    }

    /** Tells which key is set up. */
    @Command(
            name = "show",
            description = "Tell which key is set up, and whom it names.",
            footerHeading = "%nExample:%n",
            footer = "  spadework key show")
    static final class Show implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Override
        public Integer call() throws IOException {
            Optional<SigningKey> key = SigningKey.setUp();
            String text = key.isEmpty()
                    ? "No key is set up; issued PDFs are not signed. Make one with: spadework key make"
                    : place() + ": key of " + key.get().holder() + ". "
                            + (key.get().isSelfMade() ? SELF_MADE : "Others vouch for it.");
            spec.commandLine().getOut().println(text);
            return ExitCode.DONE;
        }
    }
}
