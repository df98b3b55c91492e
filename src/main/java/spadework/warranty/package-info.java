// SPDX-License-Identifier: Apache-2.0
/**
 * A warranty after the job: what it covers and until when, who has it, what was claimed, what the owner does each
 * season. Pure: it reads no file and no clock, and it decides no claim.
 */
package spadework.warranty;
