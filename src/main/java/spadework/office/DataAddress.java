package spadework.office;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Locale;

/** A picture file as a data address, so that a page needs no file beside it. */
final class DataAddress {
    private DataAddress() {}

    /** PNG by its ending, anything else is taken as JPEG. */
    static String of(Path file) {
        String kind = file.toString().toLowerCase(Locale.ROOT).endsWith(".png") ? "png" : "jpeg";
        try {
            return "data:image/" + kind + ";base64," + Base64.getEncoder().encodeToString(Files.readAllBytes(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
