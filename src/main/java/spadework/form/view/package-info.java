/** Price, findings, drawing and page beside them. */
package spadework.form.view;
