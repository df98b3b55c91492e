// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A faultless job with company and price book in a folder of their own, there to be spoiled. */
public final class SampleFiles {
    static final String BUNDLED = "/spadework/intake/small-default.json";

    private final Path folder;

    private SampleFiles(Path folder) {
        this.folder = folder;
    }

    static SampleFiles in(Path folder) {
        for (String name : List.of("job.json", "company.json", "price-book.json")) {
            write(folder.resolve(name), resource("full/" + name));
        }
        return new SampleFiles(folder);
    }

    /** Replaces the first place where a file says something. */
    SampleFiles with(String name, String from, String to) {
        Path file = folder.resolve(name);
        String text = read(file);
        int at = text.indexOf(from);
        if (at < 0) {
            throw new IllegalArgumentException(name + " nowhere says: " + from);
        }
        write(file, text.substring(0, at) + to + text.substring(at + from.length()));
        return this;
    }

    SampleFiles without(String name) throws IOException {
        Files.delete(folder.resolve(name));
        return this;
    }

    SampleFiles with(String name, byte[] bytes) throws IOException {
        Files.write(folder.resolve(name), bytes);
        return this;
    }

    Path folder() {
        return folder;
    }

    Reading read() {
        return new Intake(BUNDLED).read(folder);
    }

    /** The messages of the faults, each with the bare name of its file; none when the job is understood. */
    List<String> faults() {
        return read() instanceof Refused refused
                ? refused.faults().stream()
                        .map(fault -> fault.text().replace(folder + "/", ""))
                        .toList()
                : List.of();
    }

    static String resource(String name) {
        try (var in = SampleFiles.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }
}
