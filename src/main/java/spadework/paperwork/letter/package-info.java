// SPDX-License-Identifier: Apache-2.0
/** The note that goes with the papers. */
package spadework.paperwork.letter;
