// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import spadework.cli.crew.CrewCommand;
import spadework.cli.option.AtTerminal;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.ExitCode;
import spadework.cli.option.Program;
import spadework.cli.start.AddCommand;
import spadework.cli.start.NewCommand;
import spadework.cli.start.SetCommand;
import spadework.cli.store.OfficeCommand;
import spadework.cli.store.OfficeRun;
import spadework.disk.DryRun;
import spadework.office.files.OfficeLanguage;
import spadework.press.signing.SigningKey;
import spadework.reason.Reason;

/** The program. It parses, hands over and prints; it decides nothing. */
@Command(
        subcommands = {
            NewCommand.class,
            AddCommand.class,
            SetCommand.class,
            DocumentsCommand.class,
            PriceCommand.class,
            CheckCommand.class,
            IssueCommand.class,
            AcceptCommand.class,
            ChangeCommand.class,
            CancelJobCommand.class,
            OrdersCommand.class,
            CrewCommand.class,
            AccountCommand.class,
            CloseCommand.class,
            RegisterCommand.class,
            WarrantyCommand.class,
            BookCommand.class,
            BidsCommand.class,
            CopyCommand.class,
            RepriceCommand.class,
            LostCommand.class,
            FeedbackCommand.class,
            SeasonCommand.class,
            FigureCommand.class,
            FormCommand.class,
            KeyCommand.class,
            OfficeCommand.class
        })
public final class Spadework extends Program {
    public Spadework() {
        this(LocalDate.now());
    }

    /** The program on a day. */
    Spadework(LocalDate today) {
        super(today);
    }

    public static void main(String[] arguments) throws InterruptedException {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        signing();
        language();
        if (FormCommand.isPlain(arguments)) {
            FormCommand.openPlain(arguments);
            System.exit(ExitCode.DONE);
        }
        AtTerminal.prepare();
        System.exit(run(out, err, arguments));
    }

    /** The firm's key: named by the environment, or where the command that makes one puts it. */
    private static void signing() {
        String named = System.getenv("SPADEWORK_KEY");
        String password = System.getenv("SPADEWORK_KEY_PASSWORD");
        if (System.getProperty(SigningKey.FILE) == null) {
            System.setProperty(
                    SigningKey.FILE, named == null ? KeyCommand.usual().toString() : named);
        }
        if (password != null && System.getProperty(SigningKey.PASSWORD) == null) {
            System.setProperty(SigningKey.PASSWORD, password);
        }
    }

    /** The language that somebody at this machine wants, whatever the company's file says. */
    private static void language() {
        String wanted = System.getenv("SPADEWORK_LANGUAGE");
        if (wanted != null && System.getProperty(OfficeLanguage.PROPERTY) == null) {
            System.setProperty(OfficeLanguage.PROPERTY, wanted);
        }
    }

    /** Runs one command line and answers its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return run(new Spadework(), out, err, arguments);
    }

    /** The same on a day of its own. */
    static int run(Spadework program, PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = OneCommand.of(program.today(), arguments)
                .orElseGet(() -> new CommandLine(program))
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((exception, command, parsed) -> {
                    command.getErr().println(described(exception));
                    return ExitCode.UNUSABLE;
                });
        line.setExecutionStrategy(Spadework::executed);
        line.setParameterExceptionHandler(new UsageErrorHandler(line.getParameterExceptionHandler()));
        if (HelpLanguage.isAskedFor(arguments)) {
            HelpLanguage.speak(line, arguments);
        }
        if (arguments.length == 0) {
            line.usage(err);
            return ExitCode.UNUSABLE;
        }
        try {
            return line.execute(arguments);
        } catch (StackOverflowError | OutOfMemoryError beyond) {
            err.println("It could not be done: " + described(beyond));
            return ExitCode.UNUSABLE;
        }
    }

    /** Runs the command; in a dry run it tells what would be written, and nothing is. */
    private static int executed(ParseResult parsed) {
        ParseResult command = parsed;
        while (command.hasSubcommand()) {
            command = command.subcommand();
        }
        ParseResult matched = command;
        try {
            return OfficeRun.of(command, () -> run(matched, parsed));
        } catch (ExecutionException | ParameterException ours) {
            throw ours;
        } catch (Exception failed) {
            throw new ExecutionException(command.commandSpec().commandLine(), Reason.of(failed), failed);
        }
    }

    private static int run(ParseResult command, ParseResult parsed) {
        if (!command.hasMatchedOption(DryRunOption.NAME)) {
            return new RunLast().execute(parsed);
        }
        PrintWriter out = command.commandSpec().commandLine().getOut();
        out.println("Dry run: nothing is written. This is what it would say:");
        try (DryRun run = DryRun.begin()) {
            int code = dry(parsed);
            if (code == ExitCode.DONE && !run.files().isEmpty()) {
                out.println("Without " + DryRunOption.NAME + " this would be written:");
                run.files().forEach(file -> out.println("  " + file));
            }
            return code;
        }
    }

    private static int dry(ParseResult parsed) {
        try {
            return new RunLast().execute(parsed);
        } catch (ExecutionException thrown) {
            if (thrown.getCause() instanceof DryRun.Ended) {
                return ExitCode.DONE;
            }
            throw thrown;
        }
    }

    private static String described(Throwable thrown) {
        Throwable cause = thrown instanceof UncheckedIOException ? thrown.getCause() : thrown;
        if (OfficeRun.isSaidByTheOffice(cause)) {
            return cause.getMessage();
        }
        boolean file = cause instanceof IOException;
        return (file ? "A file or folder cannot be used: " : "") + Reason.of(cause);
    }
}
