// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

/**
 * One thing that the crew writes down.
 *
 * @param key where it goes below {@code asBuilt} in the job file, as {@code walls/A/length}
 * @param what it is, in the crew's words
 * @param planned what was agreed or planned; empty where nothing was
 */
public record LogRow(String key, String what, String planned) {}
