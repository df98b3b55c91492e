// SPDX-License-Identifier: Apache-2.0
/** Commands of the crew's papers. */
package spadework.cli.crew;
