// SPDX-License-Identifier: Apache-2.0
/** How keys and words of the file formats were spelled before, which old files are read by; states by name. */
package spadework.spelling;
