// SPDX-License-Identifier: Apache-2.0
/**
 * How steep the bank of a trench may stand, and the bank that a wall's trench gets. Takeoff and safety share it; it
 * knows neither quantities nor findings.
 */
package spadework.trench;
