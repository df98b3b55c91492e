// SPDX-License-Identifier: Apache-2.0
/** Lines, words and labels on a sheet, in points. */
package spadework.drawing.shape;
