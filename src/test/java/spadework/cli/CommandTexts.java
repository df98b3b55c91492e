// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * What the help of every command says, by the keys that picocli looks for in a bundle: one for all commands where they
 * say the same of a flag, else one for each command.
 */
public final class CommandTexts {
    /** A text at a command: its key for all commands, its key for this one, and what it says. */
    record Said(String key, String ofCommand, String text) {}

    private CommandTexts() {}

    /** All of it in English, each key once. */
    public static Map<String, String> english() {
        return byKey(all(new CommandLine(new Spadework())));
    }

    static Map<String, String> byKey(List<Said> all) {
        Map<String, Set<String>> texts = new LinkedHashMap<>();
        all.forEach(said ->
                texts.computeIfAbsent(said.key, none -> new LinkedHashSet<>()).add(said.text));
        Map<String, String> keyed = new TreeMap<>();
        all.forEach(said -> keyed.put(texts.get(said.key).size() == 1 ? said.key : said.ofCommand, said.text));
        return keyed;
    }

    /** All texts of a command and of those below it. */
    static List<Said> all(CommandLine line) {
        List<Said> all = new ArrayList<>();
        CommandSpec command = line.getCommandSpec();
        UsageMessageSpec usage = command.usageMessage();
        add(all, command, "usage.description", usage.description());
        add(all, command, "usage.synopsisHeading", usage.synopsisHeading());
        add(all, command, "usage.commandListHeading", usage.commandListHeading());
        add(all, command, "usage.footerHeading", usage.footerHeading());
        add(all, command, "usage.exitCodeListHeading", usage.exitCodeListHeading());
        usage.exitCodeList()
                .forEach((code, text) -> add(all, command, "usage.exitCodeList." + code, code + ":" + text));
        command.options().forEach(option -> add(all, command, key(option), option.description()));
        command.positionalParameters().forEach(one -> add(all, command, key(one), one.description()));
        new LinkedHashSet<>(line.getSubcommands().values()).forEach(below -> all.addAll(all(below)));
        return all;
    }

    private static void add(List<Said> all, CommandSpec command, String key, String... lines) {
        String text = String.join("\n", lines);
        if (!text.isBlank()) {
            all.add(new Said(key, command.qualifiedName(".") + "." + key, text));
        }
    }

    private static String key(ArgSpec argument) {
        if (!argument.descriptionKey().isEmpty()) {
            return argument.descriptionKey();
        }
        return argument instanceof OptionSpec option
                ? option.names()[0].replaceFirst("^-+", "")
                : argument.paramLabel() + "[" + ((PositionalParamSpec) argument).index() + "]";
    }
}
