// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.FilmThickness;

/**
 * What the wall gets.
 *
 * @param item code of the line item; empty for the book's standard item of that system
 * @param dryFilm the promised dry film of a coating
 */
public record Finish(FinishSystem system, Optional<String> item, Optional<FilmThickness> dryFilm) {}
