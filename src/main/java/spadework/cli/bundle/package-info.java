// SPDX-License-Identifier: Apache-2.0
/** How the jar starts itself, and what lies beside it in a bundle. */
package spadework.cli.bundle;
