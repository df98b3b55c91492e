/** The commands that look at registers. */
package spadework.cli.register;
