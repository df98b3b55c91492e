// SPDX-License-Identifier: Apache-2.0
/** Commands of the calculators. */
package spadework.cli.figure;
