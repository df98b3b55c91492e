// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.wording.Language;

/** The office reads what the nearest company's file says, and English where none says anything. */
class OfficeLanguageTest {
    private static final Language SPANISH = Language.of("es");

    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void job() throws IOException {
        job = Files.createDirectories(folder.resolve("jobs/2026-001")).resolve("job.json");
    }

    @AfterEach
    void noLanguageAsked() {
        System.clearProperty(OfficeLanguage.PROPERTY);
    }

    @Test
    void isEnglishWithoutACompany() {
        assertThat(OfficeLanguage.near(job)).isEqualTo(Language.ENGLISH);
        assertThat(OfficeLanguage.near()).isEqualTo(Language.ENGLISH);
    }

    @Test
    void isThatOfTheCompanyAboveTheJob() throws IOException {
        company("jobs", "{\"name\": \"A firm\", \"officeLanguage\": \"es\"}");
        assertThat(OfficeLanguage.near(job)).isEqualTo(SPANISH);
    }

    @Test
    void companyThatSaysNoneIsShownAsTheOneAboveIt() throws IOException {
        company("jobs", "{\"officeLanguage\": \"es\"}");
        company("jobs/2026-001", "{\"name\": \"The sample's firm\"}");
        assertThat(OfficeLanguage.near(job)).isEqualTo(SPANISH);
        company("jobs/2026-001", "{\"officeLanguage\": \"en\"}");
        assertThat(OfficeLanguage.near(job)).isEqualTo(Language.ENGLISH);
    }

    @Test
    void firstPlaceWithALanguageDecides() throws IOException {
        company("jobs", "{\"officeLanguage\": \"es\"}");
        assertThat(OfficeLanguage.near(folder.resolve("nowhere"), job)).isEqualTo(SPANISH);
    }

    @Test
    void fileThatCannotBeReadOrNamesNoLanguageSaysNothing() throws IOException {
        company("jobs", "{ not JSON");
        assertThat(OfficeLanguage.near(job)).isEqualTo(Language.ENGLISH);
        company("jobs", "{\"officeLanguage\": \"xx\"}");
        assertThat(OfficeLanguage.near(job)).isEqualTo(Language.ENGLISH);
    }

    @Test
    void whoeverSitsThereMayAskForAnother() throws IOException {
        System.setProperty(OfficeLanguage.PROPERTY, "es");
        assertThat(OfficeLanguage.near(job)).isEqualTo(SPANISH);
        company("jobs", "{\"officeLanguage\": \"es\"}");
        System.setProperty(OfficeLanguage.PROPERTY, "en");
        assertThat(OfficeLanguage.near(job)).isEqualTo(Language.ENGLISH);
    }

    private void company(String at, String text) throws IOException {
        Files.writeString(folder.resolve(at).resolve("company.json"), text);
    }
}
