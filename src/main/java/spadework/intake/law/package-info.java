// SPDX-License-Identifier: Apache-2.0
/** State rules. */
package spadework.intake.law;
