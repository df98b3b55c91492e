// SPDX-License-Identifier: Apache-2.0
package spadework.bids;

/** Why a line's price moved. */
public enum MoveCause {
    /** The line was not there. */
    NEW,
    /** The line is no more. */
    GONE,
    /** Another quantity is priced. */
    QUANTITY,
    /** The material costs otherwise, or is packed or wasted otherwise. */
    MATERIAL,
    /** The crew does more or less in an hour, or it is another crew or machine. */
    PRODUCTION,
    /** The subcontractor or the tip costs otherwise. */
    SUBCONTRACT,
    /** Wages, machines, slowdowns or purchase tax of the company. */
    COMPANY,
    /** Contingency, overhead or profit of the company. */
    PRICE_RULES,
    /** Whole packages for the job fall otherwise on the lines. */
    SHARE_OF_ORDER
}
