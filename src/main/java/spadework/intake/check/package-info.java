// SPDX-License-Identifier: Apache-2.0
/** What has to fit together in a job. */
package spadework.intake.check;
