// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.draft.Draft;
import spadework.wording.Language;

/**
 * What the office reads: the language of the window and of the help of commands, from {@code officeLanguage} of the
 * company's file. A file that cannot be read says nothing about it here; whoever prices by it tells what is wrong.
 */
public final class OfficeLanguage {
    /** Set where somebody wants another language than the company's file has, whichever that is. */
    public static final String PROPERTY = "spadework.language";

    private static final String COMPANY = "company.json";
    private static final String KEY = "/officeLanguage";

    private OfficeLanguage() {}

    /**
     * That of the nearest company that says one, in the first of these places or above it, then of the next place. So
     * the sample, whose own company says none, is shown as its office reads.
     *
     * @param places files or folders, which need not be there
     */
    public static Language near(Path... places) {
        return named(System.getProperty(PROPERTY))
                .or(() -> Stream.of(places)
                        .flatMap(OfficeLanguage::above)
                        .flatMap(folder -> of(folder.resolve(COMPANY)).stream())
                        .findFirst())
                .orElse(Language.ENGLISH);
    }

    private static Stream<Path> above(Path place) {
        return Stream.iterate(place.toAbsolutePath().normalize(), Objects::nonNull, Path::getParent);
    }

    private static Optional<Language> of(Path company) {
        if (!Files.isRegularFile(company)) {
            return Optional.empty();
        }
        try {
            return Draft.read(Files.readString(company)).flatMap(read -> named(read.shown(KEY)));
        } catch (IOException | UncheckedIOException unreadable) {
            return Optional.empty();
        }
    }

    /** The language of that code, if there is one. */
    private static Optional<Language> named(String code) {
        return Language.all().stream()
                .filter(language ->
                        language.code().equals(code) || language.name().equals(code))
                .findFirst();
    }
}
