/** Plain widgets, words, look, background tasks. */
package spadework.form.kit;
