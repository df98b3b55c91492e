// SPDX-License-Identifier: Apache-2.0
/** The purchase order, for a supplier: what to bring, when and where. */
package spadework.paperwork.buying;
