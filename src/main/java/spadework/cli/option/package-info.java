// SPDX-License-Identifier: Apache-2.0
/** What several commands have in common. */
package spadework.cli.option;
