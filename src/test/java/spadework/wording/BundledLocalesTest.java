// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A Java made for the bundle knows the months of every language: without them a Spanish paper says "10 de Aug". */
class BundledLocalesTest {
    private static final Pattern LOCALES =
            Pattern.compile("<argument>--include-locales</argument>\\s*<argument>([^<]*)</argument>");

    @Test
    void theRuntimeOfTheBundleHasEachLanguage() throws IOException {
        Matcher named = LOCALES.matcher(Files.readString(Path.of("pom.xml")));
        assertThat(named.find()).isTrue();
        assertThat(List.of(named.group(1).split(",")))
                .containsAll(Language.all().stream().map(Language::code).toList());
    }
}
