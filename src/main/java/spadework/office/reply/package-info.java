/** What a step answers, as text. */
package spadework.office.reply;
