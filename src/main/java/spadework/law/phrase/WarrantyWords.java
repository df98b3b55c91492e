// SPDX-License-Identifier: Apache-2.0
package spadework.law.phrase;

import java.util.List;
import java.util.regex.Pattern;

/**
 * The usual wordings about warranties in one language, of a text without accents ({@link BareText}).
 *
 * @param disclaimer of implied warranties
 * @param lifetime a term that is called a lifetime
 * @param whose the lifetime is
 * @param implied names implied warranties
 */
public record WarrantyWords(Pattern disclaimer, Pattern lifetime, Pattern whose, Pattern implied) {
    /** Within one sentence. */
    private static final String NEAR = "[^.;!?]{0,80}";

    /** What somebody typed may be in any of them, whatever the paper is in. */
    public static final List<WarrantyWords> ALL = List.of(english(), spanish());

    private static WarrantyWords english() {
        String warranties = "(?:warrant(?:y|ies)|guarant(?:y|ies|ees?))";
        String fitness = "(?:merchantability|fitness for (?:a|any) particular purpose)";
        return new WarrantyWords(
                anyOf(
                        "in lieu of" + NEAR + "(?:" + warranties + "|all others|obligations?|remed(?:y|ies)|the law)",
                        warranties + NEAR + "in lieu of",
                        "in place of (?:all|any|every)(?: other)?" + NEAR + warranties,
                        "(?:no|not any|without(?: any)?) (?:other )?(?:express(?:ed)?|implied)" + NEAR + warranties,
                        "(?:no|without(?: any)?) other " + warranties,
                        "(?:sold|supplied|provided|given|installed|delivered|accepted) without(?: any| a)? "
                                + warranties,
                        "(?:no|without(?: any)?) " + warranties
                                + " (?:of any kind|of merchantability|of fitness|is implied|are implied)",
                        "(?:no|not|without|disclaim\\w*|exclud\\w*|exclusion|waiv\\w*|den(?:y|ies))" + NEAR + fitness,
                        fitness + NEAR + "(?:disclaimed|excluded|waived|not (?:given|included|apply))",
                        "(?:disclaim\\w*|exclud\\w*|waiv\\w*)" + NEAR + "(?:implied|other|all) " + NEAR + warranties,
                        "implied " + warranties + NEAR + "(?:disclaimed|excluded|waived|do(?:es)? not apply)",
                        "(?:sole|only|exclusive)(?: and exclusive)? " + warranties,
                        "with all (?:its |their )?faults",
                        "(?<!(?:leave|leaves|left|stay|stays|stayed|remain|remains|kept) )"
                                + "as[ -]is(?:$|[^\\w ]| basis| condition| where| and| with| or)"),
                anyOf(
                        "life[ -]?time",
                        warranties + NEAR + "for life(?! of)",
                        "for life" + "(?! of)" + NEAR + warranties),
                anyOf(
                        "life[ -]?time of (?:the|your|this)(?: original| first)? ?(?!" + warranties + ")\\w+",
                        "(?:owner|buyer|purchaser|homeowner|house|home|building|structure|pump)(?:'s|\u2019s) "
                                + "life[ -]?time",
                        "life[ -]?time (?:here )?(?:means|is) ",
                        "as long as (?:you|the (?:original |first )?(?:owner|buyer|purchaser)"
                                + "|(?:the |your )?(?:house|home|building))"),
                anyOf("implied " + warranties));
    }

    /** The words of Spanish contracts for the same; from memory. */
    private static WarrantyWords spanish() {
        String warranties = "garantias?";
        String implied = "(?:implicitas?|tacitas?)";
        String fitness = "(?:comerciabilidad|comercializacion"
                + "|(?:idoneidad|aptitud|adecuacion)(?: \\w+)? (?:para|a) (?:un|cualquier|algun|ningun|determinado)\\w*"
                + "(?: \\w+)? (?:fin|uso|proposito))";
        String refuse = "(?:exclu[iy]\\w*|rechaz\\w+|renunci\\w+|nieg\\w+|niega\\w*|descart\\w+|anul\\w+|exim\\w+)";
        String kept = "(?<!(?:dejamos|deja|dejan|dejar|queda|quedan|quedo|sigue|siguen|permanece|permanecen) )";
        return new WarrantyWords(
                anyOf(
                        "(?:en lugar de|en vez de|sustituye\\w* a?|reemplaza\\w* a?)" + NEAR
                                + "(?:tod[ao]s?|cualquier|otr[ao]s?|demas)" + NEAR
                                + "(?:" + warranties + "|obligacion(?:es)?|recursos?|ley)",
                        warranties + NEAR + "en (?:lugar|vez) de (?:tod[ao]s?|cualquier|otr[ao]s?)",
                        "(?:ningun\\w*|sin(?: ningun\\w*)?|no (?:\\w+ ){1,3}(?:ningun\\w*|mas)) (?:otr[ao]s? )?"
                                + warranties + " (?:expres\\w+|implicit\\w+|tacit\\w+|algun\\w*|de ningun\\w* "
                                + "|de comerciabilidad|de idoneidad|de aptitud|adicional\\w*)",
                        "(?:ninguna|sin|no (?:\\w+ ){1,3}ninguna|no hay|no existen?|no (?:se )?(?:da|dan|damos"
                                + "|ofrece\\w*|otorga\\w*)) otras? " + warranties,
                        "(?:vend\\w+|vende\\w*|suministra\\w*|entrega\\w*|instala\\w*|acepta\\w*) sin (?:ninguna )?"
                                + warranties,
                        "no (?:hay|existen?|(?:se )?(?:da|dan|damos|ofrece\\w*|otorga\\w*))(?: ninguna)?(?: otras?)? "
                                + warranties + "(?: \\w+){0,3} " + implied,
                        "(?:no|sin|" + refuse + ")" + NEAR + fitness,
                        fitness + NEAR + "(?:" + refuse + "|no (?:se )?(?:aplic\\w+|inclu\\w+|rig\\w+))",
                        refuse + NEAR + "(?:tod[ao]s?|cualquier|demas|otras?) " + NEAR + warranties,
                        refuse + NEAR + warranties + " " + implied,
                        warranties + " " + implied + NEAR + "(?:" + refuse
                                + "|no (?:se )?(?:aplic\\w+|rig\\w+|val\\w+))",
                        "(?:unica|exclusiva)(?: y (?:unica|exclusiva))? " + warranties,
                        warranties + " (?:es |son )?(?:unica|exclusiva)s?(?: y (?:unica|exclusiva)s?)?\\b",
                        "con todos (?:sus|los) (?:defectos|fallos|vicios)",
                        kept + "(?:tal como esta|tal cual(?: esta)?|(?<!tal )como esta)n?"
                                + "(?=$|[^\\w ]| (?:y|con|sin|donde|o) )",
                        kept + "en (?:el|las) (?:estado|condiciones) en que se (?:encuentra|halla)n?"),
                anyOf(
                        "vitalici[ao]s?",
                        "de por vida",
                        warranties + NEAR + "(?:por|para|durante) (?:toda )?la vida(?! util)",
                        warranties + NEAR + "para siempre"),
                anyOf(
                        "vida (?:util )?(?:del|de (?:la|el|su|este|esta))(?: (?:primer[ao]?|actual))? (?!garantia)\\w+",
                        "(?:de por vida|vitalici[ao])[\"\u201d\u00bb]? (?:aqui )?(?:quiere decir|significa|es) ",
                        "mientras (?:usted|(?:el|la) (?:primer[ao]? )?"
                                + "(?:duen[ao]|propietari[ao]|comprador\\w*)|(?:la |su )?(?:casa|vivienda)"
                                + "|el edificio)"),
                anyOf(warranties + " " + implied));
    }

    private static Pattern anyOf(String... wordings) {
        return Pattern.compile("\\b(?:" + String.join("|", wordings) + ")", Pattern.CASE_INSENSITIVE);
    }
}
