// SPDX-License-Identifier: Apache-2.0
package spadework.reason;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ReasonTest {

    @ParameterizedTest(name = "{1}")
    @MethodSource("described")
    void reasonIsAPlainSentence(Throwable thrown, String text) {
        assertThat(Reason.of(thrown)).isEqualTo(text);
    }

    static Stream<Arguments> described() {
        return Stream.of(
                Arguments.of(new NoSuchFileException("job.json"), "there is no job.json"),
                Arguments.of(
                        new UncheckedIOException(new AccessDeniedException("issued")),
                        "issued may not be read or written by this user; check its permissions and those of its"
                                + " folder"),
                Arguments.of(
                        new FileAlreadyExistsException("a.pdf", null, "an issued document is never written over"),
                        "a.pdf is there already; an issued document is never written over"),
                Arguments.of(new FileSystemException("a.pdf"), "a.pdf cannot be used"),
                Arguments.of(new MalformedInputException(1), "its text is not UTF-8; save it as UTF-8"),
                Arguments.of(new StackOverflowError(), "it is nested too deep to be worked on"),
                Arguments.of(new IOException("no company.json here"), "no company.json here"),
                Arguments.of(new IllegalStateException("java.lang.NumberFormatException: no number"), "no number"));
    }

    @Test
    void faultWithoutWordsIsNeverNull() {
        assertThat(Reason.of(new NullPointerException()))
                .startsWith("an internal fault, null pointer at line ")
                .endsWith(" of ReasonTest");
        assertThat(Reason.of(new IOException((String) null))).startsWith("an internal fault, io at line ");
        assertThat(Reason.of(new OutOfMemoryError())).startsWith("it needs more memory");
    }
}
