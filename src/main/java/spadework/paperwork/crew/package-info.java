// SPDX-License-Identifier: Apache-2.0
/** Papers of the crew: what is done where, and the log that comes back filled in. */
package spadework.paperwork.crew;
