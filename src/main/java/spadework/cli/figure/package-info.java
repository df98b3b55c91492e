/** Commands of the calculators. */
package spadework.cli.figure;
