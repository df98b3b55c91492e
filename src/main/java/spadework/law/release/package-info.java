// SPDX-License-Identifier: Apache-2.0
/** The releases of a claim on the house whose words a state prescribes. */
package spadework.law.release;
