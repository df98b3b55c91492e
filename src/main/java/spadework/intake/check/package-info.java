/** What has to fit together in a job. */
package spadework.intake.check;
