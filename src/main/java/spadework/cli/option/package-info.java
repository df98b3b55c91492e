/** What several commands have in common. */
package spadework.cli.option;
