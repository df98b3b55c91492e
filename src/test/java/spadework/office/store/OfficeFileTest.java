// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Fault;
import spadework.store.Store;

/** The file that names an office: a folder or a server, never a password; every fault at once. */
class OfficeFileTest {
    @TempDir
    private Path folder;

    @Test
    void namesAFolderBesideIt() throws IOException {
        try (Store store = OfficeFile.read(file("{\"format\": 1, \"folders\": \"jobs\"}"), null)
                .open()) {
            assertThat(store.called()).isEqualTo(folder.resolve("jobs").toString());
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{}                                                    | no home",
                "{\"folders\": \"a\", \"host\": \"h\", \"database\": \"d\", \"user\": \"u\"} | two homes",
                "{\"folders\": \"a\", \"password\": \"x\"}             | a password in the file",
                "{\"folders\": \"a\", \"colour\": \"x\"}               | the key \"colour\"",
                "{\"host\": \"h\", \"database\": \"d\", \"user\": \"u\", \"port\": \"99999\"} | \"99999\"",
                "{\"host\": \"h\", \"database\": \"d\", \"user\": \"u\", \"tls\": \"maybe\"}  | \"maybe\"",
                "[1, 2                                                 | no JSON"
            })
    void oneFaultForEachThingThatIsWrong(String text, String found) throws IOException {
        assertThat(refusal(text).faults()).extracting(Fault::found).containsExactly(found);
    }

    @Test
    void allFaultsAtOnce() throws IOException {
        assertThat(refusal("{\"host\": \"h\", \"port\": \"0\", \"pwd\": \"x\"}").faults())
                .hasSize(4);
    }

    @Test
    void passwordIsNeverToldAgain() throws IOException {
        assertThat(refusal("{\"folders\": \"a\", \"password\": \"hunter2\"}").getMessage())
                .doesNotContain("hunter2");
    }

    private OfficeFile.Unusable refusal(String text) throws IOException {
        Path file = file(text);
        return catchThrowableOfType(OfficeFile.Unusable.class, () -> OfficeFile.read(file, null));
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("office.json"), text);
    }
}
