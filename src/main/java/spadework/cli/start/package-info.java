// SPDX-License-Identifier: Apache-2.0
/** Commands that start a firm or a job and change a job's file. */
package spadework.cli.start;
