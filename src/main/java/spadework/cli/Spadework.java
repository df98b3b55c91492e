// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ScopeType;
import spadework.cli.option.ExitCode;

/** The program. It parses, hands over and prints; it decides nothing. */
@Command(
        name = "spadework",
        version = "spadework 1.0.0",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        description = "Measures, checks, prices and papers the work that keeps water out of houses from the outside.",
        subcommands = {
            DocumentsCommand.class, PriceCommand.class, CheckCommand.class, IssueCommand.class, AcceptCommand.class,
            ChangeCommand.class, CloseCommand.class, RegisterCommand.class, WarrantyCommand.class, BookCommand.class,
            BidsCommand.class, CopyCommand.class, RepriceCommand.class, LostCommand.class, FeedbackCommand.class,
            FigureCommand.class, FormCommand.class
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:everything asked for was done",
            "1:a job was refused: its file is at fault, or a stop is open; a register was changed; a warranty forbids"
                    + " it",
            "2:the command line, a template or a folder cannot be used"
        },
        footerHeading = "%nExample:%n",
        footer = "  spadework documents sample-quotes/block-basement-to-swale --out documents")
public final class Spadework {

    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, arguments));
    }

    /** Runs one command line and answers its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = new CommandLine(new Spadework())
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((exception, command, parsed) -> {
                    command.getErr().println(told(exception));
                    return ExitCode.UNUSABLE;
                });
        line.setParameterExceptionHandler(new UsageErrorHandler(line.getParameterExceptionHandler()));
        if (arguments.length == 0) {
            line.usage(err);
            return ExitCode.UNUSABLE;
        }
        return line.execute(arguments);
    }

    private static String told(Exception exception) {
        Throwable cause = exception instanceof UncheckedIOException ? exception.getCause() : exception;
        boolean file = cause instanceof IOException;
        return (file ? "A file or folder cannot be used: " : "") + cause.getMessage();
    }
}
