// SPDX-License-Identifier: Apache-2.0
/** The second window: book, bids, lessons. */
package spadework.form.library;
