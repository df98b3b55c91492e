package spadework.office;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file so that a crash leaves the old one or the new one, never half of it. */
final class AtomicFile {
    private AtomicFile() {}

    /**
     * Writes beside the file, forces it to disk, then takes the file's place in one step.
     *
     * @throws IOException if it cannot be written; the old file is then untouched
     */
    static void write(Path file, byte[] content) throws IOException {
        Path beside = Files.createTempFile(file.getParent(), "." + file.getFileName(), ".part");
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(content);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
