// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import spadework.cli.option.ExitCode;

/** A calculator's command line that cannot be read gets one message; other commands keep theirs with the usage. */
final class UsageErrorHandler implements IParameterExceptionHandler {
    private final IParameterExceptionHandler others;

    UsageErrorHandler(IParameterExceptionHandler others) {
        this.others = others;
    }

    @Override
    public int handleParseException(ParameterException wrong, String[] arguments) throws Exception {
        CommandSpec command = wrong.getCommandLine().getCommandSpec();
        String name = command.qualifiedName().replaceFirst("^\\S+ ?", "");
        if (!name.equals("figure") && !name.startsWith("figure ")) {
            HelpLanguage.speak(root(wrong.getCommandLine()), arguments);
            return others.handleParseException(wrong, arguments);
        }
        wrong.getCommandLine().getErr().println(name + ": " + described(wrong, command));
        return ExitCode.UNUSABLE;
    }

    private static CommandLine root(CommandLine line) {
        return line.getParent() == null ? line : root(line.getParent());
    }

    private static String described(ParameterException wrong, CommandSpec command) {
        boolean calculators = !command.subcommands().isEmpty();
        String allowed = calculators
                ? String.join(", ", command.subcommands().keySet())
                : command.options().stream()
                        .map(OptionSpec::longestName)
                        .sorted()
                        .collect(Collectors.joining(", "));
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            List<String> near = unmatched.getSuggestions();
            String fix = near.isEmpty() ? "see " + command.qualifiedName() + " --help" : "write " + near.get(0);
            return "found \"" + unmatched.getUnmatched().get(0) + "\"; allowed: " + allowed + "; fix: " + fix
                    + (calculators ? "" : ", and put a value with a space in quotes");
        }
        if (wrong instanceof OverwrittenOptionException twice) {
            String flag = ((OptionSpec) twice.getOverwritten()).longestName();
            return "found " + flag + " twice; allowed: once; fix: leave one of them out";
        }
        if (wrong instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            String flag = ((OptionSpec) missing.getMissing().get(0)).longestName();
            return "found " + flag + " without a value; allowed: " + flag + " and its value; fix: "
                    + String.join(" ", missing.getMissing().get(0).description());
        }
        return "found no calculator; allowed: " + allowed + "; fix: see spadework figure --help";
    }
}
