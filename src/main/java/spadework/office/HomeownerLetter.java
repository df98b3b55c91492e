// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.office.files.FileName;
import spadework.paperwork.Dossier;
import spadework.paperwork.letter.CoverNote;
import spadework.post.Enclosure;
import spadework.post.Letter;
import spadework.press.template.Templates;
import spadework.wording.Language;

/** Makes the letter that carries papers to the homeowner. Papers that are the contractor's alone are refused. */
public final class HomeownerLetter {
    private static final String PDF = "application/pdf";

    private HomeownerLetter() {}

    /**
     * The letter of a job.
     *
     * @param papers the papers that go with it, each as PDF
     * @throws IllegalArgumentException if one of the papers is not for the homeowner
     */
    static Letter letter(Templates templates, Dossier bid, Map<JobPaper, byte[]> papers) {
        Dossier dossier = HomeownerPapers.words(bid, "letter");
        Language language = dossier.terms().language();
        List<String> names = new ArrayList<>();
        List<Enclosure> enclosures = new ArrayList<>();
        for (Map.Entry<JobPaper, byte[]> enclosed : papers.entrySet()) {
            JobPaper paper = enclosed.getKey();
            if (!paper.paper().isForHomeowner()) {
                throw new IllegalArgumentException(paper.file() + " is not for the homeowner");
            }
            names.add(dossier.terms().get("enclosed." + paper.paper().file()));
            String file = FileName.safe(dossier.job().number()) + "-" + paper.file() + ".pdf";
            enclosures.add(new Enclosure(file, PDF, enclosed.getValue()));
        }
        Map<String, Object> model = Map.of("note", CoverNote.of(dossier, names));
        return new Letter(
                dossier.company().email(),
                dossier.job().customer().email().orElse(""),
                templates.fill("letter/subject.ftl", model, language),
                templates.fill("letter/note.ftl", model, language),
                enclosures);
    }
}
