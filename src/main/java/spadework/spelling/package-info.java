// SPDX-License-Identifier: Apache-2.0
/** How keys and words of the file formats were spelled before: old files are read, and none is written that way. */
package spadework.spelling;
