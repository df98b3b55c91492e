// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;

/**
 * A look at the trench before anybody went in: before each shift, and after rain (29 CFR 1926.651(k)(1)).
 *
 * @param by the competent person
 * @param soil what the soil was taken for and by which test
 * @param hazards what was found; empty where nothing was
 * @param done what was done about it
 */
public record DayInspection(LocalDate on, String by, String soil, String hazards, String done) {}
