// SPDX-License-Identifier: Apache-2.0
/** Drawings as SVG. */
package spadework.press.svg;
