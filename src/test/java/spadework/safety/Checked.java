// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.job.Job;
import spadework.job.WaterJob;
import spadework.press.template.Templates;
import spadework.pricebook.Books;
import spadework.pricebook.PriceBook;

/** The findings of a job, each with words and citation. */
final class Checked {
    private static final Phrases PHRASES = new Phrases(Templates.bundled().words("words/findings.properties"));

    private Checked() {}

    static List<Finding> findings(Job job) {
        return findings(job, Books.standard());
    }

    static List<Finding> findings(Job job, PriceBook book) {
        List<Finding> found = Checks.of(new Facts(job, book));
        for (Finding finding : found) {
            assertThat(PHRASES.what(finding)).isNotBlank();
            assertThat(PHRASES.action(finding)).isNotBlank();
            assertThat(PHRASES.homeowner(finding).orElse("none")).isNotBlank();
            assertThat(finding.citation()).isNotBlank();
        }
        return found;
    }

    static List<String> ids(WaterJob job) {
        return findings(job.build()).stream().map(Finding::id).toList();
    }

    /** The one finding of that kind. */
    static Finding only(WaterJob job, String id) {
        List<Finding> found =
                findings(job.build()).stream().filter(f -> f.id().equals(id)).toList();
        assertThat(found).as(id).hasSize(1);
        return found.get(0);
    }

    /** What and action in words. */
    static String described(Finding finding) {
        return PHRASES.what(finding) + " " + PHRASES.action(finding);
    }
}
