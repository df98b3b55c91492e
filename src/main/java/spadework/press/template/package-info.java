/** Templates read, filled and faulted. */
package spadework.press.template;
