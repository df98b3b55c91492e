// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;

/** {@link HandWritten} as a jar. */
final class HandWrittenJar {
    private HandWrittenJar() {}

    static Path make(Path file) throws IOException {
        String entry = HandWritten.class.getName().replace('.', '/') + ".class";
        try (InputStream in = HandWritten.class.getResourceAsStream("/" + entry);
                OutputStream out = Files.newOutputStream(file);
                JarOutputStream jar = new JarOutputStream(out)) {
            jar.putNextEntry(new JarEntry(entry));
            in.transferTo(jar);
            jar.closeEntry();
        }
        return file;
    }
}
