// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

/**
 * How far from the wall the edge of its bank lies, by the soil that is found.
 *
 * @param walls that are alike in this
 * @param b in soil of Type B, as which Type A counts beside a house
 * @param c in soil of Type C, as which soil counts that nobody classed
 */
public record BankEdge(String walls, String b, String c) {}
