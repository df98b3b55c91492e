// SPDX-License-Identifier: Apache-2.0
/** The proposal. */
package spadework.paperwork.proposal;
