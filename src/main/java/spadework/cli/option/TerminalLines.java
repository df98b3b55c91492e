// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.TextTable;

/**
 * Lines as wide as the terminal. What goes into a file or to another program is left on one line each, so that it can
 * be searched.
 *
 * @param width in letters; 0 for lines that are not wrapped
 */
public record TerminalLines(int width) {
    private static final int NARROWEST = 40;
    private static final String INDENT = "  ";

    /** The lines of the terminal at which the program was called. */
    public static TerminalLines here() {
        return new TerminalLines(columns());
    }

    private static int columns() {
        if (AtTerminal.console().isEmpty()) {
            return 0;
        }
        try (Terminal terminal = TerminalBuilder.builder().dumb(true).build()) {
            return terminal.getWidth();
        } catch (IOException unknown) {
            return 0;
        }
    }

    /** A text in lines that end at words; all but the first are indented. */
    public List<String> wrapped(String text) {
        if (width < NARROWEST || text.length() <= width) {
            return List.of(text);
        }
        TextTable table = TextTable.forColumns(
                Help.defaultColorScheme(Ansi.OFF), new Column(width - INDENT.length(), 0, Column.Overflow.WRAP));
        table.addRowValues(text);
        List<String> lines =
                table.toString().lines().map(String::strip).collect(Collectors.toCollection(ArrayList::new));
        return Stream.concat(Stream.of(lines.remove(0)), lines.stream().map(line -> INDENT + line))
                .toList();
    }
}
