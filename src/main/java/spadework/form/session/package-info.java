/** The job being edited: undo, saving, steps. */
package spadework.form.session;
