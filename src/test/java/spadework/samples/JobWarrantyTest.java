// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.job.Job;
import spadework.job.JobWarranty;
import spadework.job.OutletKind;
import spadework.job.Space;
import spadework.job.WarrantyPart;
import spadework.office.Bid;
import spadework.paperwork.part.WorkConditions;

/** A warranty speaks of what this job has: no roof line where none is laid, no pump where none is set. */
class JobWarrantyTest {

    static List<Path> samples() {
        return Samples.papered();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void whatTheJobDoesNotHaveIsNotSpokenOf(Path sample) {
        Bid bid = Samples.bid(sample);
        Job job = bid.dossier().job();
        List<String> said = new ArrayList<>(job.warranty().notCovered());
        said.addAll(job.warranty().duties());
        for (WarrantyPart part : job.warranty().parts()) {
            said.add(part.part());
            said.add(part.promise());
        }
        String terms = String.join(" ", said).toLowerCase(Locale.ROOT);
        boolean sump = job.water().outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP);

        assertThat(terms.contains("pump") && terms.contains("sump")).isEqualTo(sump);
        assertThat(terms.contains("pump") || terms.contains("sump")).isEqualTo(sump);
        assertThat(terms.contains("roof line"))
                .isEqualTo(!job.water().roofLines().isEmpty());
        assertThat(terms.contains("leaf catch"))
                .isEqualTo(!job.water().roofLines().isEmpty());
        assertThat(WorkConditions.of(bid.dossier()).excluded().stream()
                        .anyMatch(text -> text.startsWith("Crawl-space")))
                .isEqualTo(job.site().space() == Space.CRAWL_SPACE);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void whatIsLeftIsAWholeSentence(Path sample) {
        Job job = Samples.bid(sample).dossier().job();
        List<String> sentences = new ArrayList<>(job.warranty().notCovered());
        sentences.addAll(job.warranty().duties());
        job.warranty().parts().forEach(part -> sentences.add(part.promise()));

        assertThat(sentences).hasSizeGreaterThan(15).allMatch(sentence -> sentence.matches("[A-Z].*[a-z]\\."));
    }

    /** A contractor may type in Spanish what a job says of its own. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void spanishTextsAreReadForTheJobToo(Path sample) {
        Job job = Samples.bid(sample).dossier().job();
        boolean sump = job.water().outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP);
        boolean roofLine = !job.water().roofLines().isEmpty();
        boolean crawlSpace = job.site().space() == Space.CRAWL_SPACE;
        assertThat(JobWarranty.said(
                        List.of(
                                "La bomba misma, que garantiza su fabricante.",
                                "Línea de techo que colocamos",
                                "Cubierta del suelo del espacio bajo la casa"),
                        job))
                .hasSize((sump ? 1 : 0) + (roofLine ? 1 : 0) + (crawlSpace ? 1 : 0));
        assertThat(JobWarranty.said(
                        List.of(
                                "El agua sale por la salida, o llega al pozo de bombeo.",
                                "Cada otoño, limpie las canaletas y el filtro de hojas de cada bajante."),
                        job))
                .containsExactly(
                        sump ? "El agua sale por la salida, o llega al pozo de bombeo." : "El agua sale por la salida.",
                        roofLine
                                ? "Cada otoño, limpie las canaletas y el filtro de hojas de cada bajante."
                                : "Cada otoño, limpie las canaletas.");
    }
}
