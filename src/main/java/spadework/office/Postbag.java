package spadework.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spadework.paperwork.CoverNote;
import spadework.paperwork.Dossier;
import spadework.post.Enclosure;
import spadework.post.Letter;
import spadework.press.Templates;

/** Makes the letter that carries papers to the homeowner. Papers that are the contractor's alone are refused. */
final class Postbag {
    private static final String PDF = "application/pdf";

    private final Templates templates;
    private final Printer printer;

    Postbag(Templates templates, Printer printer) {
        this.templates = templates;
        this.printer = printer;
    }

    /** @throws IllegalArgumentException if one of the papers is not for the homeowner */
    Letter letter(Bid bid, Set<Paper> papers) {
        Dossier dossier = bid.dossier();
        List<String> names = new ArrayList<>();
        List<Enclosure> enclosures = new ArrayList<>();
        for (Paper paper : papers.stream().sorted().toList()) {
            if (!paper.isForHomeowner()) {
                throw new IllegalArgumentException(paper.file() + " is not for the homeowner");
            }
            names.add(dossier.terms().get("enclosed." + paper.file()));
            String number = FileName.safe(dossier.job().number());
            printer.pages(bid, Set.of(paper)).forEach((file, pages) ->
                    enclosures.add(new Enclosure(number + "-" + file + ".pdf", PDF, pages)));
        }
        Map<String, Object> model = Map.of("note", CoverNote.of(dossier, names));
        return new Letter(
                dossier.company().email(),
                dossier.job().customer().email().orElse(""),
                templates.fill("letter/subject.ftl", model),
                templates.fill("letter/note.ftl", model),
                enclosures);
    }
}
