// SPDX-License-Identifier: Apache-2.0
/** The price book. */
package spadework.intake.book;
