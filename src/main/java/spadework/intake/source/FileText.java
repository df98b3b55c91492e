// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import spadework.disk.InsideFolder;
import spadework.finding.Fault;
import spadework.finding.Place;

/**
 * The text of a file, or the fault that keeps it from being read.
 *
 * @param text the text without a byte order mark; empty when there is a fault
 */
public record FileText(String text, Optional<Fault> fault) {
    /** The largest file, in bytes: 10 MB. */
    public static final int LARGEST = 10 * 1024 * 1024;

    /** Reads a file. {@code shown} is its name in faults. */
    public static FileText of(Path path, String shown) {
        try (InputStream in = Files.newInputStream(InsideFolder.itself(path))) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            return bytes.length > LARGEST ? tooLarge(shown) : decoded(bytes, shown);
        } catch (IOException unreadable) {
            boolean link = Files.isSymbolicLink(path);
            return refused(
                    Place.ofFile(shown),
                    link ? "a link that leads out of its folder, or nowhere" : "a file that cannot be opened",
                    "a file that may be read",
                    link ? "put the file itself there" : "check the file's permissions");
        }
    }

    public static FileText decoded(byte[] bytes, String shown) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
        out.flip();
        if (result.isError()) {
            String found = String.format("the byte %02X", bytes[in.position()] & 0xFF);
            return refused(endOf(out, shown), found, "text in UTF-8", "save the file as UTF-8");
        }
        String text = out.toString();
        return new FileText(text.startsWith("\uFEFF") ? text.substring(1) : text, Optional.empty());
    }

    private static FileText tooLarge(String shown) {
        return refused(
                Place.ofFile(shown), "more than 10 MB", "at most 10 MB", "keep photos in files of their own beside it");
    }

    private static FileText refused(Place place, String found, String allowed, String fix) {
        return new FileText("", Optional.of(new Fault(place, found, allowed, fix)));
    }

    /** The place just behind the text. */
    private static Place endOf(CharSequence text, String shown) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean ends = c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'));
            line += ends ? 1 : 0;
            column = ends ? 1 : column + 1;
        }
        return new Place(shown, line, column, "");
    }
}
