// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;
import java.util.regex.Pattern;
import spadework.wording.TextMemo;

/**
 * A company's usual texts, read for one job: what is about a sump, a roof line or a crawl space alone is left out where
 * the job has none, and so is the half of a sentence after its "or" or "and" that is. Texts are read in any language
 * that papers are in.
 */
public final class JobWarranty {
    private static final String ARTICLE = "^(?:an? |the |your |el |la |los |las |una? |su |sus )?";
    private static final String SUMP = "(?:sump|pump|pozo de bombeo|bomba)";
    private static final String CATCH = "(?:leaf catch|filtros? de hojas)";
    private static final Pattern PUMP =
            starts("(?:sump|pump|battery backup|pozos? de bombeo|bombas?|bater[ií]as? de respaldo)");
    private static final Pattern ROOF_LINE = starts("(?:roof lines?|leaf catch|l[ií]neas? de techo|filtros? de hojas)");
    private static final Pattern CRAWL_SPACE =
            anyCase(ARTICLE + "crawl[- ]spaces?\\b|\\bespacio bajo (?:el piso|la casa)\\b");
    private static final Pattern OR_PUMP = anyCase(",? (?:or|o) [^,.;]*\\b" + SUMP + "\\b[^,.;]*");
    private static final Pattern AND_LEAF_CATCH = anyCase(",? (?:and|y) [^,.;]*\\b" + CATCH + "[^,.;]*");
    private static final Pattern NAMES_PUMP = anyCase(SUMP);
    private static final Pattern NAMES_CATCH = anyCase(CATCH);

    private static final TextMemo<About> ABOUT = new TextMemo<>(About::of);

    private final boolean sump;
    private final boolean roofLine;
    private final boolean crawlSpace;

    /**
     * What a text is about, and how it reads without what it names besides.
     *
     * @param pump about a sump or its pump alone
     * @param roofLine about a roof line alone
     * @param crawlSpace about a crawl space alone
     */
    private record About(
            boolean pump,
            boolean roofLine,
            boolean crawlSpace,
            String whole,
            String withoutPump,
            String withoutCatch,
            String withoutBoth) {
        static About of(String text) {
            String withoutPump = without(NAMES_PUMP, OR_PUMP, text);
            return new About(
                    PUMP.matcher(text).find(),
                    ROOF_LINE.matcher(text).find(),
                    CRAWL_SPACE.matcher(text).find(),
                    text,
                    withoutPump,
                    without(NAMES_CATCH, AND_LEAF_CATCH, text),
                    NAMES_CATCH.matcher(text).find()
                            ? AND_LEAF_CATCH.matcher(withoutPump).replaceAll("")
                            : withoutPump);
        }

        private static String without(Pattern named, Pattern half, String text) {
            return named.matcher(text).find() ? half.matcher(text).replaceAll("") : text;
        }

        String said(boolean sump, boolean roofLine) {
            String withPump = roofLine ? whole : withoutCatch;
            String withoutIt = roofLine ? withoutPump : withoutBoth;
            return sump ? withPump : withoutIt;
        }
    }

    private JobWarranty(Job job) {
        this.sump = job.water().outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP);
        this.roofLine = !job.water().roofLines().isEmpty();
        this.crawlSpace = job.site().space() == Space.CRAWL_SPACE;
    }

    /** The terms without what this job does not have. */
    static WarrantyTerms of(WarrantyTerms terms, Job job) {
        JobWarranty told = new JobWarranty(job);
        return new WarrantyTerms(
                terms.parts().stream()
                        .filter(part -> told.concerns(part.part()))
                        .map(part -> new WarrantyPart(part.part(), told.said(part.promise()), part.years()))
                        .toList(),
                terms.replyDays(),
                terms.visitDays(),
                terms.findingDays(),
                terms.beginDays(),
                terms.transfers(),
                terms.transferNoticeDays(),
                told.said(terms.notCovered()),
                told.said(terms.duties()));
    }

    /** Those of the texts that concern this job, as they concern it. */
    public static List<String> said(List<String> texts, Job job) {
        return new JobWarranty(job).said(texts);
    }

    private List<String> said(List<String> texts) {
        return texts.stream().filter(this::concerns).map(this::said).toList();
    }

    private boolean concerns(String text) {
        About about = ABOUT.of(text);
        return (sump || !about.pump) && (roofLine || !about.roofLine) && (crawlSpace || !about.crawlSpace);
    }

    private String said(String text) {
        return ABOUT.of(text).said(sump, roofLine);
    }

    private static Pattern starts(String what) {
        return anyCase(ARTICLE + what + "\\b");
    }

    private static Pattern anyCase(String pattern) {
        return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }
}
