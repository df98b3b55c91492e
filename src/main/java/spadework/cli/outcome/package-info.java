// SPDX-License-Identifier: Apache-2.0
/** What a step of the office tells whoever gave the command. */
package spadework.cli.outcome;
