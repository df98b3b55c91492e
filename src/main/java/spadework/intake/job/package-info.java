// SPDX-License-Identifier: Apache-2.0
/** The job. */
package spadework.intake.job;
