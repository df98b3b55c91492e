// SPDX-License-Identifier: Apache-2.0
/** The commands that look at registers. */
package spadework.cli.register;
