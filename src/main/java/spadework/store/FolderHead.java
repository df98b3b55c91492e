// SPDX-License-Identifier: Apache-2.0
package spadework.store;

/**
 * A job's folder in a list.
 *
 * @param name of the folder
 * @param number of the job; empty where it has none
 * @param title of the job; empty where it has none, or whoever asks may not see it
 * @param stands where the bid stands, by the register
 */
public record FolderHead(String name, String number, String title, FolderStanding stands) {}
