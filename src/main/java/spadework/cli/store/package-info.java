// SPDX-License-Identifier: Apache-2.0
/** Commands about the office and its home, and every other command taken in it. */
package spadework.cli.store;
