// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.press.template.Templates;

/**
 * What general programs of this machine take for the same: a browser prints the four pages, an office suite turns the
 * four workbooks into PDF. Which are not installed are left out.
 */
final class InstalledPrograms {
    private static final List<String> BROWSERS = List.of("chromium", "chromium-browser", "google-chrome");

    private InstalledPrograms() {}

    /**
     * Command lines by name.
     *
     * @param printed the folder with the printed papers of the sample
     * @param work where pages and results may lie
     */
    static Map<String, List<String>> of(Path printed, Path work) throws IOException {
        Map<String, List<String>> programs = new LinkedHashMap<>();
        Optional<Path> browser =
                BROWSERS.stream().flatMap(name -> onPath(name).stream()).findFirst();
        if (browser.isPresent()) {
            programs.put("browser, the same four pages", shell(printing(browser.get(), pages(work))));
        }
        Optional<Path> suite = onPath("soffice");
        if (suite.isPresent()) {
            programs.put("office suite, the four workbooks", shell(converting(suite.get(), printed, work)));
        }
        return programs;
    }

    private static Optional<Path> onPath(String program) {
        return Pattern.compile(File.pathSeparator)
                .splitAsStream(System.getenv().getOrDefault("PATH", ""))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
    }

    private static List<String> shell(String script) {
        return List.of("sh", "-ec", script);
    }

    /** The pages of the first sample as the templates give them, styles and drawings within. */
    private static List<Path> pages(Path work) throws IOException {
        SampleSet set = SampleSet.of("block-basement-to-swale");
        Map<Path, String> pages = new TreeMap<>();
        for (String document : set.models().keySet()) {
            Map<String, Object> given = new HashMap<>(set.model(document));
            given.put("info", set.info());
            pages.put(work.resolve(document + ".xhtml"), Templates.bundled().fill(document + "/page.ftlh", given));
        }
        for (Map.Entry<Path, String> page : pages.entrySet()) {
            Files.writeString(page.getKey(), page.getValue());
        }
        return List.copyOf(pages.keySet());
    }

    private static String printing(Path browser, List<Path> pages) {
        return pages.stream()
                .map(page -> "'" + browser + "' --headless --no-sandbox --disable-gpu --no-pdf-header-footer"
                        + " --print-to-pdf='" + page + ".pdf' 'file://" + page + "'")
                .collect(Collectors.joining("\n"));
    }

    private static String converting(Path suite, Path printed, Path work) throws IOException {
        try (Stream<Path> files = Files.walk(printed)) {
            return "'" + suite + "' --headless --convert-to pdf --outdir '" + work.resolve("converted") + "' "
                    + files.filter(file -> file.toString().endsWith(".xlsx"))
                            .sorted()
                            .map(file -> "'" + file + "'")
                            .collect(Collectors.joining(" "));
        }
    }
}
