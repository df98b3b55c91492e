// SPDX-License-Identifier: Apache-2.0
/** The way that a solid pipe takes at least by the places on the plan, against the length that was written. */
package spadework.safety.way;
