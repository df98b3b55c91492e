// SPDX-License-Identifier: Apache-2.0
/** One value: lengths, shares, names, choices. */
package spadework.intake.value;
