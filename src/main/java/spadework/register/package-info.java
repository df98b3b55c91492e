// SPDX-License-Identifier: Apache-2.0
/**
 * The register of a job: what was issued, agreed and claimed, in a file that only grows and in which every later change
 * is found. Also how files are written whole. It takes dates from the caller, knows no rule about warranties and
 * prints nothing.
 */
package spadework.register;
