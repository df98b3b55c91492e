// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/** What the packed jar owes: a bill of materials, and the license of everything in it. */
class JarContentsIT {
    private static final Path JAR = Path.of("target", "spadework.jar");

    @Test
    void everyLibraryOfTheBillOfMaterialsHasItsLicenseText() throws IOException {
        try (ZipFile jar = new ZipFile(JAR.toFile())) {
            JsonNode bill =
                    new ObjectMapper().readTree(jar.getInputStream(jar.getEntry("META-INF/sbom/spadework.cdx.json")));
            assertThat(bill.path("bomFormat").asText()).isEqualTo("CycloneDX");
            Set<String> libraries = new TreeSet<>();
            bill.path("components")
                    .forEach(one -> libraries.add(one.path("name").asText()));
            assertThat(libraries).contains("pdfbox", "bcprov-jdk18on", "poi-ooxml", "jackson-databind");
            Set<String> licensed = jar.stream()
                    .map(entry -> entry.getName())
                    .filter(name -> name.matches("META-INF/licenses/[^/]+-jar/.*(?i:license|notice).*"))
                    .map(name -> name.replaceAll("META-INF/licenses/([^/]+)-jar/.*", "$1"))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertThat(licensed).containsAll(libraries);
        }
    }

    @Test
    void faceCarriesItsLicense() throws IOException {
        try (ZipFile jar = new ZipFile(JAR.toFile())) {
            assertThat(jar.getEntry("templates/fonts/OFL.txt")).isNotNull();
        }
    }
}
