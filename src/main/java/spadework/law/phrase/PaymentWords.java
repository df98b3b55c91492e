// SPDX-License-Identifier: Apache-2.0
package spadework.law.phrase;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What tells in one language upon what a payment falls due, of words in small letters without accents.
 *
 * @param done names work that is done
 * @param before names what comes before the work
 * @param yetToCome what stands behind a "before"
 * @param elsewhere what is done there is no work at the house: a paper, an order, a machine
 */
public record PaymentWords(Pattern done, Pattern before, Pattern yetToCome, Pattern elsewhere) {
    /** What somebody typed may be in any of them, whatever the paper is in. */
    private static final List<PaymentWords> ALL = List.of(english(), spanish());

    /** Whether the words name work that is done, in any language. */
    public static boolean sayDone(String when) {
        String said = atTheHouse(bare(when));
        return ALL.stream().anyMatch(words -> words.done.matcher(said).find());
    }

    /** Whether the words name what comes before the work, in any language. */
    public static boolean sayBefore(String when) {
        String said = bare(when);
        return ALL.stream().anyMatch(words -> words.before.matcher(said).find());
    }

    private static String bare(String when) {
        return BareText.of(when).bare().toLowerCase(Locale.ROOT);
    }

    /** The words without what is yet to come, and without what is done elsewhere. */
    private static String atTheHouse(String said) {
        String left = said;
        for (PaymentWords words : ALL) {
            left = words.elsewhere
                    .matcher(words.yetToCome.matcher(left).replaceAll(""))
                    .replaceAll("");
        }
        return left;
    }

    private static PaymentWords english() {
        String notTheWork = "(?:(?:contract|agreement|paper|permit|order|financ|loan|schedul|locat"
                + "|machine|excavator|material|deliver|deposit|payment)\\w*|plans?|marks?)";
        return new PaymentWords(
                words("(?:trench|ground|wall)\\w*(?: \\w+){0,3} (?:is|are) (?:open|dug)|dug"
                        + "|coated|laid|flow test|test|filled|backfill\\w*|graded|clean(?:ed)?(?: up)?|complet\\w+|done"
                        + "|finish\\w*|passed|in place|installed|inspect\\w*|closed|seen"),
                words("sign\\w*|deposit|down payment|book\\w*|order\\w*|schedul\\w*|permit\\w*"
                        + "|before|machine\\w*|excavator\\w*|equipment|deliver\\w*|arriv\\w*|on site|start\\w*"
                        + "|begin\\w*|first day|mobili[sz]\\w*"),
                Pattern.compile("\\bbefore\\b[^,;.]*"),
                words(notTheWork + "(?: (?!and\\b)\\w+){0,6} (?:is|are|was|were|been) (?:\\w+ )?"
                        + "(?:complet\\w+|done|finish\\w*|filled|seen|passed|closed|in place|inspect\\w*)"
                        + "(?: (?:in|out))?|(?:seen|complet\\w+|finish\\w*|inspect\\w*|clos\\w+)(?: of)? "
                        + "(?:(?:the|our|your|a) )?" + notTheWork
                        + "|test pits?(?: (?:is|are) dug)?|(?:pre\\W?\\w+|first|site) inspect\\w*"));
    }

    /**
     * The words of Spanish contracts for the same; from memory. A noun that sounds like work done, as {@code acabado}
     * or {@code lista}, names none.
     */
    private static PaymentWords spanish() {
        String is = "(?:esta|estan|este|esten|fue|fueron|queda|quedan|quede|queden|sea|sean)";
        String notTheWork = "(?:contrat|acuerd|papel|permis|orden|pedid|financ|prestam|program|marc|maquin|excavador"
                + "|material|entreg|deposit|anticip|pago|plano|solicitud)\\w*";
        String isDone = "(?:completad[oa]s?|complet[oa]s?|hech[oa]s?|terminad[oa]s?|acabad[oa]s?|list[oa]s?|vist[oa]s?"
                + "|aprobad[oa]s?|cerrad[oa]s?|llenad[oa]s?|llen[oa]s?|inspeccionad[oa]s?|colocad[oa]s?|puest[oa]s?"
                + "|instalad[oa]s?|en su lugar)";
        String done = "(?:excavad|recubiert|revocad|impermeabilizad|sellad|colocad|tendid|instalad|rellenad|nivelad"
                + "|limpi|limpiad|terminad|completad|inspeccionad|cerrad)[oa]s?";
        return new PaymentWords(
                words("(?:zanja|terreno|suelo|pared)\\w*(?: \\w+){0,3} " + is + " abiert[oa]s?|" + done
                        + "|" + is + " (?:\\w+ )?" + isDone + "|puest[oa]s? en su lugar|prueba(?: con agua)?"
                        + "|terminacion|visto bueno|vist[oa]s?|vio"),
                words("firm\\w+|anticip\\w+|enganche|deposit\\w+|reserv\\w+|pedid\\w+|orden\\w*|encarg\\w+"
                        + "|program\\w+|permis\\w+|antes|maquin\\w+|excavadora\\w*|equipos?|entreg\\w+|lleg\\w+"
                        + "|en el sitio|empez\\w+|empiez\\w+|comienz\\w+|comenz\\w+|inici\\w+|primer dia|moviliz\\w+"),
                Pattern.compile("\\bantes (?:del?|que)\\b[^,;.]*"),
                words(notTheWork + "(?: (?!y\\b)\\w+){0,6} " + is + " (?:\\w+ )?" + isDone
                        + "|" + notTheWork + "(?: (?!y\\b)\\w+){0,2} " + isDone
                        + "|(?:vio|ve|vea|vist[oa]s?|terminacion|inspeccion\\w*|visto bueno)(?: (?:del?|a))? "
                        + "(?:(?:el|la|los|las|su|sus|un|una|nuestr\\w+) )?" + notTheWork
                        + "|hoyos? de prueba(?: " + is + " (?:\\w+ )?(?:excavad|hech)[oa]s?)?|a prueba de \\w+"
                        + "|a la vista|(?:primera|previa) inspeccion|inspeccion (?:previa|inicial|del sitio)"));
    }

    private static Pattern words(String any) {
        return Pattern.compile("\\b(?:" + any + ")\\b");
    }
}
