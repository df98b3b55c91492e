// SPDX-License-Identifier: Apache-2.0
/** The formulas of flow. */
package spadework.water.flow;
