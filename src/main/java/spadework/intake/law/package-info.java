/** State rules. */
package spadework.intake.law;
