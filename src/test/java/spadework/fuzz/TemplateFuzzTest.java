// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import spadework.press.page.PageSource;
import spadework.press.template.TemplateFault;
import spadework.press.template.Templates;

/** Whatever a template says, it gives a page, or is told with its name; and it comes to an end. */
class TemplateFuzzTest {
    private static final Path FOLDER = folder();
    private static final Map<String, Object> MODEL = Map.of(
            "title", "Back wall", "walls", List.of(Map.of("label", "A"), Map.of("label", "B")), "price", "$1,200.00");

    static {
        System.setProperty("spadework.templateSeconds", "2");
    }

    @FuzzTest
    void templateGivesAPageOrIsTold(byte[] file) throws IOException {
        Files.write(FOLDER.resolve("page.ftlh"), file);
        try {
            PageSource.read("page.ftlh", Templates.with(FOLDER).fill("page.ftlh", MODEL));
        } catch (TemplateFault described) {
            ReadableMessage.hold(described.getMessage().replace("freemarker.", ""));
        }
    }

    private static Path folder() {
        try {
            Path folder = Files.createTempDirectory("fuzz");
            folder.toFile().deleteOnExit();
            return folder;
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
