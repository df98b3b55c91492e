// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import spadework.draft.BookDraft;
import spadework.intake.Intake;

/** Whatever a price book says, it is read or refused with faults; and it can be shown as of another day. */
class BookFuzzTest {
    private static final Path FILE = Path.of("sample-quotes", "price-book.json");
    private static final LocalDate DAY = LocalDate.of(2026, 6, 30);
    private static final Intake INTAKE = new Intake();

    @FuzzTest
    void bookIsReadOrRefused(byte[] file) {
        String text = new String(file, StandardCharsets.UTF_8);
        ReadableMessage.hold(INTAKE.readBook(text, FILE).faults());
        BookDraft.read(text)
                .ifPresent(book -> ReadableMessage.hold(
                        INTAKE.readBook(book.asOf(DAY).text(), FILE).faults()));
    }
}
