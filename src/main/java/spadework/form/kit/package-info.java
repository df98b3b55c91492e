// SPDX-License-Identifier: Apache-2.0
/** Plain widgets, words, look, background tasks. */
package spadework.form.kit;
