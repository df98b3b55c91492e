// SPDX-License-Identifier: Apache-2.0
/** The commands on the price book. */
package spadework.cli.book;
