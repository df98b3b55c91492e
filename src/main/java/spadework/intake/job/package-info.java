/** The job. */
package spadework.intake.job;
