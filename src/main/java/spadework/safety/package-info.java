// SPDX-License-Identifier: Apache-2.0
/**
 * Rules about trench, structure, utilities, trees, falls, outlets and films: a job goes in, findings come out. They
 * hold figures and no sentences; nothing here prices, prints or stops anybody.
 */
package spadework.safety;
