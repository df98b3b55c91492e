// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

/**
 * The ground on which the crew works.
 *
 * @param locateTicket number of the ticket of the utility marking; empty where there is none yet
 * @param deference the sentence that leaves the last word to local code and the competent person
 */
public record ScopeSite(String locateTicket, String soil, String deference) {}
