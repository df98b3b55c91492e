// SPDX-License-Identifier: Apache-2.0
/** The company. */
package spadework.intake.company;
