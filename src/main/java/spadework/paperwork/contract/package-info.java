/** The contract and its change orders. */
package spadework.paperwork.contract;
