// SPDX-License-Identifier: Apache-2.0
/** Bids side by side, copies, new prices, feedback, what-if. */
package spadework.office.portfolio;
