// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

/**
 * What a wall gets, in words the code allows.
 *
 * @param system {@code coating}, {@code sheet} or {@code parge}
 * @param material what it is by property, as {@code liquid synthetic rubber}
 * @param word {@code waterproofing} or {@code dampproofing}: the word follows the film
 * @param dryFilm as {@code 60 mil} or {@code 59.1 mil (1.5 mm)}; empty where there is no film
 * @param wetFilm as {@code 86 mil}; empty where there is no film
 * @param codeMinimum the film from which the code's list calls it waterproofing, empty where it lists none
 * @param waterproofing whether the code lets it be called so, in whatever language the word is
 */
public record FinishWork(
        String system,
        String material,
        String word,
        String dryFilm,
        String wetFilm,
        int coats,
        String codeMinimum,
        boolean waterproofing) {

    public boolean isWaterproofing() {
        return waterproofing;
    }
}
