// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;

/**
 * What a job goes by.
 *
 * @param number the contractor's own number; papers and files are named after it
 * @param issued the date that every paper of the set carries
 * @param validDays how long the price stands
 */
public record JobHead(String number, String title, LocalDate issued, int validDays) {}
