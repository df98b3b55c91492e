// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

/**
 * A measure as agreed and as built.
 *
 * @param built empty where it was not recorded
 */
public record AgreedAndBuilt(String agreed, String built) {}
