// SPDX-License-Identifier: Apache-2.0
/**
 * Commands, exit codes and what is printed to the screen. It knows the office and the findings, and decides nothing
 * about a job.
 */
package spadework.cli;
