/** One value: lengths, shares, names, choices. */
package spadework.intake.value;
