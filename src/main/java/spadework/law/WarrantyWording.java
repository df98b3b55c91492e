// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.law.phrase.BareText;
import spadework.law.phrase.WarrantyWords;

/**
 * Wording that no contract with a written warranty may carry: disclaimers of implied warranties (15 USC 2308) and a
 * lifetime that does not say whose (16 CFR 239.4). It looks for the usual wordings of every language that papers are
 * in; that it finds none clears nothing.
 */
public final class WarrantyWording {
    private WarrantyWording() {}

    /**
     * A stop for each text that carries such wording.
     *
     * @param texts every text that the buyer reads, by where it stands
     */
    public static List<Finding> of(Map<String, String> texts) {
        List<Finding> found = new ArrayList<>();
        texts.forEach((place, written) -> {
            BareText text = BareText.of(written);
            said(text, WarrantyWords::disclaimer)
                    .ifPresent(words -> found.add(stop("implied-disclaimed", place, words, "15 USC 2308(a), (c)")));
            boolean saysWhose = said(text, WarrantyWords::whose).isPresent();
            said(text, WarrantyWords::lifetime)
                    .filter(words -> !saysWhose)
                    .ifPresent(words -> found.add(stop("lifetime-bare", place, words, "16 CFR 239.4")));
        });
        return List.copyOf(found);
    }

    /** Whether a text limits how long implied warranties last, which a limited warranty may (15 USC 2308(b)). */
    public static boolean limitsImplied(String text) {
        return said(BareText.of(text), WarrantyWords::implied).isPresent();
    }

    /** The first words of a kind in any language, as they were written. */
    private static Optional<String> said(BareText text, Function<WarrantyWords, Pattern> kind) {
        return WarrantyWords.ALL.stream()
                .map(words -> kind.apply(words).matcher(text.bare()))
                .filter(Matcher::find)
                .map(found -> text.written(found.start(), found.end()))
                .findFirst();
    }

    private static Finding stop(String id, String place, String words, String citation) {
        return new Finding(id, Severity.STOP, place, Map.of("words", words), citation);
    }
}
