// SPDX-License-Identifier: Apache-2.0
/** A firm and its first job, and parts added to a job from the command line. */
package spadework.office.start;
