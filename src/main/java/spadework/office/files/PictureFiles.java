// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Base64;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

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

        /** PNG by its ending, anything else is taken as JPEG. */
        String address(Path file) {
            try {
                BasicFileAttributes stands = Files.readAttributes(file, BasicFileAttributes.class);
                Held held = now.getOrDefault(file, before.get(file));
                if (held == null || held.bytes != stands.size() || !held.changed.equals(stands.lastModifiedTime())) {
                    held = new Held(stands.lastModifiedTime(), stands.size(), read(file));
                }
                now.put(file, held);
                return held.address;
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }

        /** Keeps these pictures for the next asking, and no others. */
        public void keep() {
            last = Map.copyOf(now);
        }

        private String read(Path file) throws IOException {
            String kind = file.toString().toLowerCase(Locale.ROOT).endsWith(".png") ? "png" : "jpeg";
            return "data:image/" + kind + ";base64," + Base64.getEncoder().encodeToString(Files.readAllBytes(file));
        }
    }
}
