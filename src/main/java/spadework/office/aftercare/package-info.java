// SPDX-License-Identifier: Apache-2.0
/** Warranties: transfer, claim, card. */
package spadework.office.aftercare;
