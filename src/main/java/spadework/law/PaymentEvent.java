// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What the words of a payment say that it falls due upon. Whether a payment is one before the work is told from them,
 * not from a mark that may be left out: "the day the machine arrives" names nothing that is done yet, nor does what
 * stands behind a "before", nor a paper that is filled in or a machine that was seen.
 */
public enum PaymentEvent {
    /** It names work that is done, or a test that was seen. */
    WORK_DONE,
    /** It falls due at signing, at an order, a delivery, an arrival or a start. */
    BEFORE_WORK,
    /** Its words name neither; it is taken as one before the work. */
    UNSAID;

    private static final Pattern DONE = words("(?:trench|ground|wall)\\w*(?: \\w+){0,3} (?:is|are) (?:open|dug)|dug"
            + "|coated|laid|flow test|test|filled|backfill\\w*|graded|clean(?:ed)?(?: "
            + "up)?|complet\\w+|done|finish\\w*|passed"
            + "|in place|installed|inspect\\w*|closed|seen");
    private static final Pattern BEFORE =
            words("sign\\w*|deposit|down payment|book\\w*|order\\w*|schedul\\w*|permit\\w*"
                    + "|before|machine\\w*|excavator\\w*|equipment|deliver\\w*|arriv\\w*|on "
                    + "site|start\\w*|begin\\w*|first day"
                    + "|mobili[sz]\\w*");

    private static final Pattern YET_TO_COME = Pattern.compile("\\bbefore\\b[^,;.]*");

    private static final String NOT_THE_WORK = "(?:(?:contract|agreement|paper|permit|order|financ|loan|schedul|locat"
            + "|machine|excavator|material|deliver|deposit|payment)\\w*|plans?|marks?)";

    /** What is done there is no work at the house: a paper, an order, a machine. */
    private static final Pattern DONE_ELSEWHERE =
            words(NOT_THE_WORK + "(?: (?!and\\b)\\w+){0,6} (?:is|are|was|were|been) (?:\\w+ )?"
                    + "(?:complet\\w+|done|finish\\w*|filled|seen|passed|closed|in place|inspect\\w*)(?: (?:in|out))?"
                    + "|(?:seen|complet\\w+|finish\\w*|inspect\\w*|clos\\w+)(?: of)? (?:(?:the|our|your|a) )?"
                    + NOT_THE_WORK
                    + "|test pits?(?: (?:is|are) dug)?|(?:pre\\W?\\w+|first|site) inspect\\w*");

    /** Of words in small letters. */
    private static Pattern words(String any) {
        return Pattern.compile("\\b(?:" + any + ")\\b");
    }

    /**
     * What a payment falls due upon.
     *
     * @param atSigning whether it is marked as a deposit
     */
    public static PaymentEvent of(String when, boolean atSigning) {
        if (atSigning) {
            return BEFORE_WORK;
        }
        String said = when.toLowerCase(Locale.ROOT);
        String so = YET_TO_COME.matcher(said).replaceAll("");
        if (DONE.matcher(DONE_ELSEWHERE.matcher(so).replaceAll("")).find()) {
            return WORK_DONE;
        }
        return BEFORE.matcher(said).find() ? BEFORE_WORK : UNSAID;
    }
}
