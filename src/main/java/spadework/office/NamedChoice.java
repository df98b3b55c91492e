// SPDX-License-Identifier: Apache-2.0
package spadework.office;

/**
 * Something that a job or a price book names, as somebody picks it.
 *
 * @param code as it is written
 * @param name what it is
 * @param price what it costs or sells for, with its unit; empty where it has none
 */
public record NamedChoice(String code, String name, String price) {}
