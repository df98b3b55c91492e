// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.List;
import java.util.Locale;
import spadework.ground.DigBody;
import spadework.job.LimitKind;
import spadework.job.Side;
import spadework.measure.Length;
import spadework.wording.Language;
import spadework.wording.Wording;

/** Every word on the plan that is not the job's own, in the language of its paper. */
public record PlanWords(Language language) {
    private static final Wording WORDS = Wording.beside(PlanWords.class);

    static final PlanWords ENGLISH = new PlanWords(Language.ENGLISH);

    String north() {
        return WORDS.in(language).get("plan-words.north");
    }

    /**
     * What is to scale and what is not.
     *
     * @param broken whether something bears a break mark
     */
    String scale(boolean broken) {
        return broken
                ? WORDS.in(language).get("plan-words.to-scale-but-broken")
                : WORDS.in(language).get("plan-words.to-scale");
    }

    /** How far an outlet lies from the house. */
    String fromHouse(String outlet, String distance) {
        return WORDS.in(language).get("plan-words.from-house", outlet, distance);
    }

    /** How long the discharge pipe of a sump is. */
    String discharge(String sump, String length) {
        return WORDS.in(language).get("plan-words.discharge-of", sump, length);
    }

    /** What a line or a sign in the legend means, as {@code drain}. */
    String meaning(String of) {
        return WORDS.in(language).get("plan-words.key." + of);
    }

    /** What an added part is called in a sentence, and behind that its own words. */
    String sentence(String of) {
        return WORDS.in(language).get("plan-words.sentence." + of);
    }

    /** A pipe in the key, with what it leads to. */
    String leads(String label, String into) {
        return WORDS.in(language).get("plan-words.leads", label, into);
    }

    String street() {
        return WORDS.in(language).get("plan-words.street");
    }

    String door() {
        return WORDS.in(language).get("plan-words.door");
    }

    String unplaced() {
        return WORDS.in(language).get("plan-words.unplaced");
    }

    /** A hole of which the job does not say where it lies. */
    String unplacedPit(DigBody pit) {
        return WORDS.in(language)
                .get(
                        "plan-words.pit-place-unknown",
                        pit.label(),
                        Length.ofFeet(pit.length()).text(),
                        Length.ofFeet(pit.width()).text());
    }

    String limit(LimitKind kind) {
        return WORDS.in(language).get("plan-words.limit." + key(kind));
    }

    /** What stands before a wall, and how far from it. */
    String limit(LimitKind kind, String distance) {
        return WORDS.in(language).get("plan-words.limit-at", limit(kind), distance);
    }

    /** The side of the house, as {@code north}. */
    String side(Side side) {
        return WORDS.in(language).get("plan-words.side." + key(side));
    }

    String row(List<String> things) {
        return language.row(things);
    }

    static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
