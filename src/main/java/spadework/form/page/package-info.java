/** The pages of a job. */
package spadework.form.page;
