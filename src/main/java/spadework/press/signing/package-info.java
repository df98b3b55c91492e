// SPDX-License-Identifier: Apache-2.0
/** The contractor's own digital signature on issued papers. */
package spadework.press.signing;
