// SPDX-License-Identifier: Apache-2.0
/** Faces, and which letters they have. */
package spadework.press.font;
