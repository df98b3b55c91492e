// SPDX-License-Identifier: Apache-2.0
/** Calculators for the job site: each takes measures and answers with figures and their working. */
package spadework.figure;
