// SPDX-License-Identifier: Apache-2.0
/** The report of a season, for the owner of the firm alone. */
package spadework.paperwork.season;
