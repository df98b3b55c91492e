// SPDX-License-Identifier: Apache-2.0
package spadework.cli.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ExitCode;
import spadework.cli.option.OfficeOption;
import spadework.cli.option.OpensOffice;
import spadework.cli.option.Today;
import spadework.office.reply.Reply;
import spadework.office.store.JobBeginning;
import spadework.office.store.OfficeCopy;
import spadework.office.store.OfficeFile;
import spadework.office.store.OfficeService;
import spadework.office.store.Visit;
import spadework.store.NotedWrites;
import spadework.store.Store;
import spadework.store.StoreText;
import spadework.store.folder.FolderStore;

/** The office that several people share. */
@Command(
        name = "office",
        description = {
            "The office that several people share: set up, list, find, copy, take a job along, bring it back.",
            "office.json in this folder, or --office FILE, names its home. Every command that takes a JOB works in it."
        },
        subcommands = {
            OfficeCommand.SetUp.class,
            OfficeCommand.Jobs.class,
            OfficeCommand.History.class,
            OfficeCommand.Who.class,
            OfficeCommand.Begin.class,
            OfficeCommand.Copy.class,
            OfficeCommand.Take.class,
            OfficeCommand.Bring.class
        },
        synopsisSubcommandLabel = "COMMAND",
        footerHeading = "%nExample:%n",
        footer = "  spadework office jobs hathersage --office office.json")
public final class OfficeCommand {
    private static final int MOST = 50;
    /** Progress is told after so many folders. */
    private static final int PROGRESS = 100;

    private OfficeCommand() {}

    /** What writes to an office. */
    @FunctionalInterface
    private interface Writing {
        Reply to(Store store) throws IOException;
    }

    /** A command that opens the office and writes to it. */
    abstract static class WritesInOffice extends InOffice {
        @Mixin
        DryRunOption dryRun;

        @Override
        public Integer call() throws IOException {
            try (Store store = file().open()) {
                return written(store, this::reply);
            }
        }
    }

    /** A command that opens the office itself. */
    abstract static class InOffice implements Callable<Integer>, OpensOffice {
        @Spec
        private CommandSpec spec;

        /** Asks the office. */
        abstract Reply reply(Store store) throws IOException;

        OfficeFile file() throws IOException {
            return OfficeFile.read(OfficeOption.of(spec).orElse(Path.of(OfficeFile.NAME)), System.getenv("PGPASSWORD"));
        }

        CommandSpec spec() {
            return spec;
        }

        @Override
        public Integer call() throws IOException {
            try (Store store = file().open()) {
                return told(reply(store));
            }
        }

        final boolean isDry() {
            OptionSpec dry = spec.findOption(DryRunOption.NAME);
            return dry != null && Boolean.TRUE.equals(dry.getValue());
        }

        /** In a dry run what would be written is noted, and told afterwards. */
        final int written(Store store, Writing writing) throws IOException {
            if (!isDry()) {
                return told(writing.to(store));
            }
            NotedWrites noted = new NotedWrites(store);
            try {
                return told(writing.to(noted));
            } finally {
                if (!noted.notes().isEmpty()) {
                    spec.commandLine().getOut().println(StoreText.of("dry.would"));
                    noted.notes().forEach(line -> spec.commandLine().getOut().println("  " + line));
                }
            }
        }

        final int told(Reply reply) {
            reply.out().forEach(spec.commandLine().getOut()::println);
            reply.err().forEach(spec.commandLine().getErr()::println);
            return reply.done() ? ExitCode.DONE : ExitCode.REFUSED;
        }
    }

    /** Makes a database an office. */
    @Command(
            name = "set-up",
            description = "Make a database an office, or bring its tables up to this program. What is there stays.",
            footerHeading = "%nExample:%n",
            footer = "  spadework office set-up --office office.json")
    static final class SetUp extends WritesInOffice {
        @Override
        Reply reply(Store store) {
            return Reply.done(List.of());
        }

        @Override
        public Integer call() throws IOException {
            if (isDry()) {
                return told(Reply.done(List.of(StoreText.of(file().isSetUp() ? "setup.same" : "dry.setup"))));
            }
            int versions = file().setUp();
            return told(Reply.done(List.of(StoreText.of(versions == 0 ? "setup.same" : "setup.done", versions))));
        }
    }

    /** Lists jobs. */
    @Command(
            name = "jobs",
            description = "List the jobs in which all the words occur; without words those changed last.",
            footerHeading = "%nExample:%n",
            footer = "  spadework office jobs hathersage --office office.json")
    static final class Jobs extends InOffice {
        @Parameters(
                arity = "0..*",
                paramLabel = "WORD",
                description = "Words of titles, people, items and notes, or how they begin.")
        private List<String> words = List.of();

        @Option(names = "--most", paramLabel = "COUNT", description = "No more than so many (default: 50).")
        private int most = MOST;

        @Override
        Reply reply(Store store) throws IOException {
            return OfficeService.jobs(store, String.join(" ", words), most);
        }
    }

    /** Tells the states that a job had. */
    @Command(
            name = "history",
            description = "Tell the states that a job had: when, by whose account, which files.",
            footerHeading = "%nExample:%n",
            footer = "  spadework office history 2026-041 --office office.json")
    static final class History extends InOffice {
        @Parameters(paramLabel = "JOB", description = "A folder of the office; \"\" for the firm's own.")
        private String job;

        @Override
        Reply reply(Store store) throws IOException {
            return OfficeService.history(store, job);
        }
    }

    /** Tells who has a job open. */
    @Command(
            name = "who",
            description = "Tell who has a job open.",
            footerHeading = "%nExample:%n",
            footer = "  spadework office who 2026-041 --office office.json")
    static final class Who extends InOffice {
        @Parameters(paramLabel = "JOB", description = "A folder of the office.")
        private String job;

        @Override
        Reply reply(Store store) throws IOException {
            return OfficeService.open(store, job);
        }
    }

    /** Begins a job. */
    @Command(
            name = "begin",
            description = "Begin a job in the office from a job file; it gets the next free number of the year.",
            footerHeading = "%nExample:%n",
            footer = "  spadework office begin jobs/usual/job.json --office office.json")
    static final class Begin extends WritesInOffice {
        @Parameters(paramLabel = "FILE", description = "A job file to begin from; its number is replaced.")
        private Path job;

        @Override
        Reply reply(Store store) throws IOException {
            String number = JobBeginning.begin(
                    store, Files.readString(job), Today.of(spec()).getYear());
            return Reply.done(List.of(StoreText.of("begun", number)));
        }
    }

    /** Copies an office. */
    @Command(
            name = "copy",
            description = {
                "Copy an office into another home, without loss, again and again if need be.",
                "A register is never cut; a folder that says something else there is left as it is."
            },
            footerHeading = "%nExample:%n",
            footer = "  spadework office copy jobs office.json")
    static final class Copy extends WritesInOffice {
        @Parameters(index = "0", paramLabel = "FROM", description = "A folder of jobs, or the file of an office.")
        private Path from;

        @Parameters(index = "1", paramLabel = "TO", description = "A folder, or the file of an office.")
        private Path to;

        @Option(names = "--over", description = "Write over folders that say something else; a register is never cut.")
        private boolean over;

        @Override
        Reply reply(Store store) {
            return Reply.done(List.of());
        }

        @Override
        public Integer call() throws IOException {
            try (Store source = home(from);
                    Store target = home(to)) {
                return written(target, to -> copied(source, to));
            }
        }

        private Reply copied(Store source, Store target) throws IOException {
            OfficeCopy.Copied copied = new OfficeCopy(source, target, over).all((done, all) -> {
                if (done % PROGRESS == 0) {
                    spec().commandLine().getErr().println(StoreText.of("copy.progress", done, all));
                }
            });
            return new Reply(
                    List.of(StoreText.of("copy.done", copied.copied(), copied.same())),
                    copied.left(),
                    copied.left().isEmpty());
        }

        private static Store home(Path path) throws IOException {
            return Files.isRegularFile(path)
                    ? OfficeFile.read(path, System.getenv("PGPASSWORD")).open()
                    : new FolderStore(path);
        }
    }

    /** Takes a job along. */
    @Command(
            name = "take",
            description = "Take a job along into a folder, for a visit without signal.",
            footerHeading = "%nExample:%n",
            footer = "  spadework office take 2026-041 --to visit --office office.json")
    static final class Take extends WritesInOffice {
        @Parameters(paramLabel = "JOB", description = "A folder of the office.")
        private String job;

        @Option(names = "--to", required = true, paramLabel = "FOLDER", description = "A folder with nothing in it.")
        private Path to;

        @Override
        Reply reply(Store store) throws IOException {
            return Reply.done(List.of(StoreText.of("taken", new Visit(store).take(job, to), to)));
        }
    }

    /** Brings a job back. */
    @Command(
            name = "bring",
            description = {
                "Bring back a job that was taken along.",
                "What one side changed is put together; a field that both changed is shown, and nothing is written."
            },
            footerHeading = "%nExample:%n",
            footer = "  spadework office bring visit --office office.json")
    static final class Bring extends WritesInOffice {
        @Parameters(paramLabel = "FOLDER", description = "The folder that it was taken to.")
        private Path from;

        @Option(names = "--mine", description = "Where both changed a field, take what the visit says.")
        private boolean mine;

        @Option(names = "--theirs", description = "Where both changed a field, take what the office says.")
        private boolean theirs;

        @Override
        Reply reply(Store store) throws IOException {
            Visit.Side side = mine ? Visit.Side.MINE : theirs ? Visit.Side.THEIRS : Visit.Side.NEITHER;
            Visit.Brought brought = new Visit(store).bring(from, side);
            return brought.done()
                    ? new Reply(List.of(StoreText.of("brought")), brought.clashes(), true)
                    : Reply.done(List.of(StoreText.of("clashes"))).andWrong(brought.clashes());
        }
    }
}
