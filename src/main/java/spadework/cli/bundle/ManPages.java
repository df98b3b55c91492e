// SPDX-License-Identifier: Apache-2.0
package spadework.cli.bundle;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** A man page of each command in the macros of roff, from the same words as {@code --help}. */
final class ManPages {
    private ManPages() {}

    /** A page for the program and for each of its commands, by file name. */
    static Map<String, String> of(CommandLine program) {
        Map<String, String> pages = new LinkedHashMap<>();
        collect(program, pages);
        return pages;
    }

    private static void collect(CommandLine command, Map<String, String> pages) {
        CommandSpec spec = command.getCommandSpec();
        String name = spec.qualifiedName("-");
        if (!spec.usageMessage().hidden()) {
            pages.put(name + ".1", page(command, name));
            spec.subcommands().values().forEach(part -> collect(part, pages));
        }
    }

    private static String page(CommandLine command, String name) {
        CommandSpec spec = command.getCommandSpec();
        UsageMessageSpec usage = spec.usageMessage();
        StringBuilder page = new StringBuilder();
        page.append(".TH \"").append(name.toUpperCase(Locale.ROOT)).append("\" 1\n");
        String[] described = usage.description();
        page.append(".SH NAME\n").append(plain(name)).append(" \\- ");
        page.append(plain(described.length == 0 ? "" : described[0])).append('\n');
        page.append(".SH SYNOPSIS\n")
                .append(plain(command.getHelp().synopsis(0).strip().replaceAll("\\s+", " ")))
                .append('\n');
        page.append(".SH DESCRIPTION\n");
        for (String line : described) {
            page.append(plain(line)).append('\n');
        }
        if (!spec.positionalParameters().isEmpty() || !spec.options().isEmpty()) {
            page.append(".SH OPTIONS\n");
        }
        for (PositionalParamSpec positional : spec.positionalParameters()) {
            item(page, positional.paramLabel(), positional.description());
        }
        for (OptionSpec option : spec.options()) {
            String label = option.arity().max() == 0 ? "" : " " + option.paramLabel();
            item(page, String.join(", ", option.names()) + label, option.description());
        }
        if (!spec.subcommands().isEmpty()) {
            page.append(".SH COMMANDS\n");
            spec.subcommands()
                    .forEach((part, line) -> item(
                            page, part, line.getCommandSpec().usageMessage().description()));
        }
        if (usage.footer().length > 0) {
            page.append(".SH EXAMPLES\n.nf\n");
            for (String line : usage.footer()) {
                page.append(plain(line.strip())).append('\n');
            }
            page.append(".fi\n");
        }
        return page.toString();
    }

    private static void item(StringBuilder page, String head, String[] words) {
        page.append(".TP\n").append(plain(head)).append('\n');
        page.append(plain(String.join(" ", words).replace("${DEFAULT-VALUE}", "see --help")))
                .append('\n');
    }

    /** Words as roff takes them: no backslash, hyphen or leading dot of theirs is a request. */
    private static String plain(String words) {
        String text =
                Ansi.OFF.string(words.replace("%%", "%")).replace("\\", "\\e").replace("-", "\\-");
        return text.startsWith(".") || text.startsWith("'") ? "\\&" + text : text;
    }
}
