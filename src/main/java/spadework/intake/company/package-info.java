/** The company. */
package spadework.intake.company;
