// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.finding.Finding;
import spadework.finding.Severity;

/**
 * Wording that no contract with a written warranty may carry: disclaimers of implied warranties (15 USC 2308) and a
 * lifetime that does not say whose (16 CFR 239.4). It looks for the usual wordings; that it finds none clears nothing.
 */
public final class WarrantyWording {
    private static final String WARRANTIES = "(?:warrant(?:y|ies)|guarant(?:y|ies|ees?))";

    /** Within one sentence. */
    private static final String NEAR = "[^.;!?]{0,80}";

    private static final Pattern DISCLAIMER = anyOf(
            "in lieu of" + NEAR + "(?:" + WARRANTIES + "|all others|obligations?|remed(?:y|ies)|the law)",
            WARRANTIES + NEAR + "in lieu of",
            "in place of (?:all|any|every)(?: other)?" + NEAR + WARRANTIES,
            "(?:no|not any|without(?: any)?) (?:other )?(?:express(?:ed)?|implied)" + NEAR + WARRANTIES,
            "(?:no|without(?: any)?) other " + WARRANTIES,
            "(?:sold|supplied|provided|given|installed|delivered|accepted) without(?: any| a)? " + WARRANTIES,
            "(?:no|without(?: any)?) " + WARRANTIES
                    + " (?:of any kind|of merchantability|of fitness|is implied|are implied)",
            "(?:no|not|without|disclaim\\w*|exclud\\w*|exclusion|waiv\\w*|den(?:y|ies))" + NEAR
                    + "(?:merchantability|fitness for (?:a|any) particular purpose)",
            "(?:merchantability|fitness for (?:a|any) particular purpose)" + NEAR
                    + "(?:disclaimed|excluded|waived|not (?:given|included|apply))",
            "(?:disclaim\\w*|exclud\\w*|waiv\\w*)" + NEAR + "(?:implied|other|all) " + NEAR + WARRANTIES,
            "implied " + WARRANTIES + NEAR + "(?:disclaimed|excluded|waived|do(?:es)? not apply)",
            "(?:sole|only|exclusive)(?: and exclusive)? " + WARRANTIES,
            "with all (?:its |their )?faults",
            "(?<!(?:leave|leaves|left|stay|stays|stayed|remain|remains|kept) )as[ -]is(?:$|[^\\w ]| basis| condition"
                    + "| where| and| with| or)");

    private static final Pattern LIFETIME =
            anyOf("life[ -]?time", WARRANTIES + NEAR + "for life(?! of)", "for life" + "(?! of)" + NEAR + WARRANTIES);

    private static final Pattern WHOSE = anyOf(
            "life[ -]?time of (?:the|your|this)(?: original| first)? ?(?!" + WARRANTIES + ")\\w+",
            "(?:owner|buyer|purchaser|homeowner|house|home|building|structure|pump)(?:'s|\u2019s) life[ -]?time",
            "life[ -]?time (?:here )?(?:means|is) ",
            "as long as (?:you|the (?:original |first )?(?:owner|buyer|purchaser)"
                    + "|(?:the |your )?(?:house|home|building))");

    private WarrantyWording() {}

    /**
     * A stop for each text that carries such wording.
     *
     * @param texts every text that the buyer reads, by where it stands
     */
    public static List<Finding> of(Map<String, String> texts) {
        List<Finding> found = new ArrayList<>();
        texts.forEach((place, written) -> {
            String text = written.replaceAll("\\s+", " ");
            Matcher disclaimer = DISCLAIMER.matcher(text);
            if (disclaimer.find()) {
                found.add(stop("implied-disclaimed", place, disclaimer.group(), "15 USC 2308(a), (c)"));
            }
            Matcher lifetime = LIFETIME.matcher(text);
            if (lifetime.find() && !WHOSE.matcher(text).find()) {
                found.add(stop("lifetime-bare", place, lifetime.group(), "16 CFR 239.4"));
            }
        });
        return List.copyOf(found);
    }

    /** Whether a text limits how long implied warranties last, which a limited warranty may (15 USC 2308(b)). */
    public static boolean limitsImplied(String text) {
        return Pattern.compile("implied " + WARRANTIES, Pattern.CASE_INSENSITIVE)
                .matcher(text.replaceAll("\\s+", " "))
                .find();
    }

    private static Finding stop(String id, String place, String words, String citation) {
        return new Finding(id, Severity.STOP, place, Map.of("words", words.strip()), citation);
    }

    private static Pattern anyOf(String... wordings) {
        return Pattern.compile("\\b(?:" + String.join("|", wordings) + ")", Pattern.CASE_INSENSITIVE);
    }
}
