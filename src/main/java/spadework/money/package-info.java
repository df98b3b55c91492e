// SPDX-License-Identifier: Apache-2.0
/**
 * US dollars: whole cents as they are printed, and exact amounts on their way there. The money library is known here
 * only; a step that could lose a fraction of a cent has its rounding named by the caller. It does not know what is
 * priced.
 */
package spadework.money;
