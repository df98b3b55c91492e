// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import spadework.picture.PictureFault;
import spadework.picture.PictureReader;
import spadework.picture.PrintablePicture;

/**
 * Picture files as data addresses, so that a page needs no file beside it. Of the job asked for last they are kept: at
 * the next keystroke a file of the same time and length is not read again.
 */
public final class PictureFiles {
    private volatile Map<Path, Held> last = Map.of();

    private record Held(FileTime changed, long bytes, String address) {}

    /** The pictures of one job. */
    public Album album() {
        return new Album();
    }

    /** The pictures of one job, each read at most once. */
    public final class Album {
        private final Map<Path, Held> before = last;
        private final Map<Path, Held> now = new HashMap<>();

        /**
         * The picture as a data address.
         *
         * @throws UncheckedIOException if it cannot be read or printed; {@link #look} tells that before
         */
        String address(Path file) {
            try {
                return look(file);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }

        /**
         * Reads a picture, if it was not read before.
         *
         * @throws PictureFault if it cannot be printed
         * @throws IOException if it cannot be read
         */
        String look(Path file) throws IOException {
            BasicFileAttributes stands = Files.readAttributes(file, BasicFileAttributes.class);
            Held held = now.getOrDefault(file, before.get(file));
            if (held == null || held.bytes != stands.size() || !held.changed.equals(stands.lastModifiedTime())) {
                held = new Held(stands.lastModifiedTime(), stands.size(), read(file));
            }
            now.put(file, held);
            return held.address;
        }

        /** Keeps these pictures for the next asking, and no others. */
        public void keep() {
            last = Map.copyOf(now);
        }

        private String read(Path file) throws IOException {
            try (InputStream in = Files.newInputStream(file)) {
                PrintablePicture picture = PictureReader.read(in.readNBytes(PictureReader.LARGEST_FILE + 1));
                return "data:image/" + picture.kind() + ";base64,"
                        + Base64.getEncoder().encodeToString(picture.bytes());
            }
        }
    }
}
