// SPDX-License-Identifier: Apache-2.0
/** Crews by day. */
package spadework.drawing.crew;
