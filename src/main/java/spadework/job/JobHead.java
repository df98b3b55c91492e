// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import spadework.wording.Language;

/**
 * What a job goes by.
 *
 * @param number the contractor's own number; papers and files are named after it
 * @param issued the date that every paper of the set carries
 * @param validDays how long the price stands
 * @param language what the homeowner reads: the language of every paper for the homeowner
 */
public record JobHead(String number, String title, LocalDate issued, int validDays, Language language) {}
