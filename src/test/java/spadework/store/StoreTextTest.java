// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The words of an office's home: one for each failure, and none that nobody says. */
class StoreTextTest {
    @ParameterizedTest
    @EnumSource(StoreFailure.Why.class)
    void everyFailureSaysWhatToDo(StoreFailure.Why why) {
        assertThat(new StoreFailure(why, null, "A", "B", "C", "D").getMessage())
                .contains("A")
                .endsWith(
                        why == StoreFailure.Why.NOT_SET_UP ? "B" : why == StoreFailure.Why.TOO_OLD ? "D" : lastOf(why));
    }

    private static String lastOf(StoreFailure.Why why) {
        return why == StoreFailure.Why.REGISTER_CUT ? "take A" : ".";
    }

    @Test
    void whatIsPutInIsNeverFilledInAgain() {
        assertThat(StoreText.of("taken", "{1}", "x")).startsWith("Taken along: {1}.");
    }

    @Test
    void everyWordIsSaidSomewhere() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/spadework"))) {
            List<Path> sources =
                    files.filter(file -> file.toString().endsWith(".java")).toList();
            StringBuilder code = new StringBuilder();
            for (Path file : sources) {
                code.append(Files.readString(file));
            }
            assertThat(ResourceBundle.getBundle("spadework.store.words").keySet().stream()
                            .filter(key -> !key.startsWith("failure."))
                            .filter(key -> code.indexOf("\"" + key + "\"") < 0)
                            .collect(Collectors.toSet()))
                    .isEmpty();
        }
    }
}
