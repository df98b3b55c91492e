// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import spadework.measure.FilmThickness;
import spadework.measure.Percent;

/**
 * What a coating promises.
 *
 * @param generic what it is, by property: the key into the code's list
 * @param volumeSolids part of the wet film that stays
 * @param dryFilm the film it is laid to unless the job says otherwise
 * @param coats number of coats
 */
public record Film(TreatmentKind generic, Percent volumeSolids, FilmThickness dryFilm, int coats) {}
