// SPDX-License-Identifier: Apache-2.0
/** The trench at a wall. */
package spadework.drawing.section;
