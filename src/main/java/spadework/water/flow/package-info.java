/** The formulas of flow. */
package spadework.water.flow;
