/**
 * State rules about the contract, as data with citations, and the check of a deposit against them. It reads no
 * file and gives no advice; what was not gathered is said to be so.
 */
package spadework.law;
