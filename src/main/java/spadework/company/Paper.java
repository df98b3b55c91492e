// SPDX-License-Identifier: Apache-2.0
package spadework.company;

/** The size of the page. */
public enum Paper {
    LETTER,
    A4
}
