// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import picocli.AutoComplete;
import picocli.CommandLine;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;

/** Writes what lies beside the program in a bundle: completion for shells, and man pages. */
public final class Share {
    private Share() {}

    /** @param arguments the folder of the build; what is written goes into {@code share} there */
    public static void main(String[] arguments) throws IOException {
        Path share = Path.of(arguments[0], "share").toAbsolutePath();
        CommandLine program = new CommandLine(new Spadework());
        write(share.resolve("bash-completion/completions/spadework"), AutoComplete.bash("spadework", program));
        for (Map.Entry<String, String> page : ManPages.of(program).entrySet()) {
            write(share.resolve("man/man1").resolve(page.getKey()), page.getValue());
        }
    }

    private static void write(Path file, String text) throws IOException {
        Disk.folders(file.getParent());
        AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    }
}
