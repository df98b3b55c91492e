/** Fields and tables bound to pointers. */
package spadework.form.field;
