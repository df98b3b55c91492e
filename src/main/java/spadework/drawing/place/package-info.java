// SPDX-License-Identifier: Apache-2.0
/** The side of the house that words of a job point to. */
package spadework.drawing.place;
