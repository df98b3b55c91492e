// SPDX-License-Identifier: Apache-2.0
/**
 * Bids side by side, for the contractor's eyes: where each one stands and what it leaves, where an item of the book was
 * used, and what moves in a bid when prices do. It reads no files.
 */
package spadework.bids;
