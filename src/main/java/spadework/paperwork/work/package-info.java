// SPDX-License-Identifier: Apache-2.0
/** The work in words, measured rows, drawings with captions. */
package spadework.paperwork.work;
