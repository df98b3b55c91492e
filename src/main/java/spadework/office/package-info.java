// SPDX-License-Identifier: Apache-2.0
/**
 * The whole pipe in one readable method: files in, files out. It puts the other packages in their order and writes
 * files; it parses no command line and prints nothing to the screen.
 */
package spadework.office;
