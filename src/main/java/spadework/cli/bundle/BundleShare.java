// SPDX-License-Identifier: Apache-2.0
package spadework.cli.bundle;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import picocli.AutoComplete;
import picocli.CommandLine;
import spadework.cli.Spadework;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;

/**
 * Writes what lies beside the program in a bundle: completion for the shell, man pages, and the program's picture; and
 * puts the jar into a folder of its own, all of which becomes part of the window's program.
 */
public final class BundleShare {
    private BundleShare() {}

    /** @param arguments the folder of the build; what is written goes into {@code share} and {@code app-input} there */
    public static void main(String[] arguments) throws IOException {
        Path build = Path.of(arguments[0]).toAbsolutePath();
        Path share = build.resolve("share");
        write(build.resolve("app-input/spadework.jar"), Files.readAllBytes(build.resolve("spadework.jar")));
        CommandLine program = new CommandLine(new Spadework());
        write(share.resolve("bash-completion/completions/spadework"), text(AutoComplete.bash("spadework", program)));
        for (Map.Entry<String, String> page : ManPages.of(program).entrySet()) {
            write(share.resolve("man/man1").resolve(page.getKey()), text(page.getValue()));
        }
        for (Map.Entry<String, byte[]> icon : IconFiles.files().entrySet()) {
            write(share.resolve("icons").resolve(icon.getKey()), icon.getValue());
        }
    }

    private static byte[] text(String words) {
        return words.getBytes(StandardCharsets.UTF_8);
    }

    private static void write(Path file, byte[] content) throws IOException {
        Disk.folders(file.getParent());
        AtomicFile.write(file, content);
    }
}
