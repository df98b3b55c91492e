package spadework.form;

import spadework.office.Handout;

/** What a paper is called in the window. */
final class PaperNames {
    private PaperNames() {}

    static String of(Handout paper) {
        String name = Words.of("paper." + paper.paper().file());
        return paper.change()
                .map(number -> Words.of("paper.numbered", name, number))
                .orElse(name);
    }
}
