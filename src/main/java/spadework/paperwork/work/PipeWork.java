// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

/**
 * A pipe run as the papers describe it.
 *
 * @param kind {@code drain}, {@code main} or {@code roof line}
 * @param pipe what it is by property
 * @param levels start and end invert with the fall between, empty where they were not measured
 * @param into where its water goes
 * @param takes what drains into it
 */
public record PipeWork(
        String label, String kind, String pipe, String length, String levels, String into, String takes) {}
