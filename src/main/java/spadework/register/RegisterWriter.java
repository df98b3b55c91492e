// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;

/** Writes lines. Only the one who may write, and who has read the whole register, holds it. */
record RegisterWriter(Path folder) {

    /** What a line says happened, and to which document. */
    record Occurrence(LocalDate on, Event event, Optional<DocumentNumber> number) {

        Occurrence(LocalDate on, Event event, DocumentNumber number) {
            this(on, event, Optional.of(number));
        }
    }

    /** Writes a line behind those that were read, then the head. It is on disk when this returns. */
    Entry write(HashChain chain, Occurrence what, List<RegisteredFile> files, Issue issue) throws IOException {
        Entry draft = new Entry(
                chain.lines + 1,
                what.on(),
                what.event(),
                what.number(),
                what.number().map(DocumentNumber::revision).orElse(0),
                files,
                issue.facts(),
                issue.warranty(),
                chain.hash,
                "");
        byte[] line = EntryJson.write(draft);
        if (line.length > RawLines.LONGEST) {
            throw new IllegalArgumentException("an entry of " + line.length + " bytes; at most " + RawLines.LONGEST);
        }
        Entry entry = EntryJson.read(line);
        if (chain.headBehind) {
            chain.head().write(folder);
        }
        append(chain, line);
        new Head(entry.line(), entry.seal()).write(folder);
        return entry;
    }

    /** Cuts half a line off, completes a last line that lacks its line feed, and adds the new one, in one write. */
    private void append(HashChain chain, byte[] line) throws IOException {
        Path file = folder.resolve(HashChain.NAME);
        boolean isNew = !Files.exists(file);
        int before = chain.endsOpen ? 1 : 0;
        byte[] bytes = new byte[before + line.length + 1];
        bytes[0] = '\n';
        System.arraycopy(line, 0, bytes, before, line.length);
        bytes[bytes.length - 1] = '\n';
        if (!isNew && hasOtherNames(file)) {
            byte[] whole = Arrays.copyOf(Files.readAllBytes(file), Math.toIntExact(chain.length + bytes.length));
            System.arraycopy(bytes, 0, whole, Math.toIntExact(chain.length), bytes.length);
            AtomicFile.write(file, whole);
            return;
        }
        try (FileChannel channel = Disk.open(file)) {
            Disk.truncate(file, channel, chain.length);
            channel.position(chain.length);
            Disk.write(file, channel, bytes);
            Disk.force(file, channel);
        }
        if (isNew) {
            Disk.forceFolder(folder);
        }
    }

    /** Whether a hard-linked copy of the folder has the same file: that one is not to grow with ours. */
    private static boolean hasOtherNames(Path file) throws IOException {
        return file.getFileSystem().supportedFileAttributeViews().contains("unix")
                && (Integer) Files.getAttribute(file, "unix:nlink", LinkOption.NOFOLLOW_LINKS) > 1;
    }
}
