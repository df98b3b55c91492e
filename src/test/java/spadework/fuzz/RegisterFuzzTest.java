// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Examination;
import spadework.register.Register;
import spadework.register.RegisterBroken;
import spadework.register.WarrantyBook;

/** Whatever a register's file holds, it is examined with words; and it is added to only where it holds. */
class RegisterFuzzTest {
    private static final Path FOLDER = folder();

    @FuzzTest
    void registerIsExamined(byte[] file) throws IOException {
        Files.write(FOLDER.resolve("register.jsonl"), file);
        Files.deleteIfExists(FOLDER.resolve("register.head"));
        Register register = Register.of(FOLDER);
        Examination found = register.check();
        ReadableMessage.hold(found.faults());
        ReadableMessage.hold(found.advice());
        List<Entry> entries = new ArrayList<>();
        register.each(entries::add);
        WarrantyBook.of(entries).current();
        try {
            register.append(LocalDate.of(2026, 4, 3), Event.NOTE, Map.of("text", "one more"));
            if (!register.check().faults().isEmpty()) {
                throw new AssertionError("a register that does not hold was added to");
            }
        } catch (RegisterBroken refused) {
            ReadableMessage.hold(refused.faults());
        }
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("fuzz");
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
