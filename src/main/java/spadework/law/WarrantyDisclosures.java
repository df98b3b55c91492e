// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.wording.Wording;

/** Holds a written warranty to the disclosures of 16 CFR 701.3(a), item by item, and to its title (15 USC 2303). */
public final class WarrantyDisclosures {
    private static final Wording WORDS = Wording.beside(WarrantyDisclosures.class);

    /** Prescribed by 16 CFR 701.3(a)(7) where the duration of implied warranties is limited. */
    static final String IMPLIED = WORDS.get("warranty-disclosures.implied");

    /** Prescribed by 16 CFR 701.3(a)(8) where incidental or consequential damages are left out. */
    static final String DAMAGES = WORDS.get("warranty-disclosures.damages");

    /** Prescribed by 16 CFR 701.3(a)(9) in every written warranty. */
    static final String RIGHTS = WORDS.get("warranty-disclosures.rights");

    private static final String ABOUT = "warranty";
    private static final Pattern SPACE = Pattern.compile("\\s+");

    private final List<Finding> found = new ArrayList<>();

    private WarrantyDisclosures() {}

    /** A finding for each item that is missing; none where all were found, which does not make it lawful. */
    public static List<Finding> of(WrittenWarranty warranty) {
        WarrantyDisclosures check = new WarrantyDisclosures();
        check.items(warranty);
        check.sentences(warranty);
        return List.copyOf(check.found);
    }

    private void items(WrittenWarranty w) {
        wants(
                isSaid(List.of(w.title()))
                        && w.title().strip().toLowerCase(Locale.ROOT).startsWith("limited warranty"),
                "title",
                "15 USC 2303(a)");
        wants(isSaid(w.coverage().who()), "who", "16 CFR 701.3(a)(1)");
        wants(isSaid(w.coverage().covered()), "covered", "16 CFR 701.3(a)(2)");
        wants(isSaid(w.coverage().notCovered()), "not-covered", "16 CFR 701.3(a)(2)");
        wants(!w.coverage().remedy().isBlank(), "remedy", "16 CFR 701.3(a)(3)");
        wants(!w.start().isBlank(), "start", "16 CFR 701.3(a)(4)");
        wants(isSaid(w.term()), "term", "16 CFR 701.3(a)(4)");
        wants(isSaid(w.claims().steps()), "claim", "16 CFR 701.3(a)(5)");
        wants(!w.claims().warrantor().isBlank() && !w.claims().contact().isBlank(), "warrantor", "16 CFR 701.3(a)(5)");
        wants(
                !w.claims().disputeChosen()
                        || w.claims()
                                .dispute()
                                .filter(described -> !described.isBlank())
                                .isPresent(),
                "dispute",
                "16 CFR 701.3(a)(6)");
    }

    private void sentences(WrittenWarranty w) {
        wants(!w.limits().implied() || says(w, IMPLIED), "implied-sentence", "16 CFR 701.3(a)(7)");
        wants(!w.limits().damages() || says(w, DAMAGES), "damages-sentence", "16 CFR 701.3(a)(8)");
        wants(says(w, RIGHTS), "rights-sentence", "16 CFR 701.3(a)(9)");
    }

    private void wants(boolean said, String item, String citation) {
        if (!said) {
            found.add(new Finding("disclosure-" + item, Severity.MUST, ABOUT, Map.of(), citation));
        }
    }

    private static boolean isSaid(Collection<String> texts) {
        return !texts.isEmpty() && texts.stream().noneMatch(String::isBlank);
    }

    private static boolean says(WrittenWarranty w, String sentence) {
        return w.text().contains(sentence)
                || SPACE.matcher(w.text()).replaceAll(" ").contains(sentence);
    }
}
