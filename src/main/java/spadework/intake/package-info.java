// SPDX-License-Identifier: Apache-2.0
/**
 * Reads job, company, price book and state rules from JSON; every fault in them at once, with file, line, column,
 * what is allowed and the fix. It measures and prices nothing.
 */
package spadework.intake;
