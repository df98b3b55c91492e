// SPDX-License-Identifier: Apache-2.0
/** The calculators for the tailgate: each takes measures and answers with figures and their working. */
package spadework.figure;
