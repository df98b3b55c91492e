// SPDX-License-Identifier: Apache-2.0
/** The job being edited: undo, saving, steps. */
package spadework.form.session;
