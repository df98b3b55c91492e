/** Warranties: transfer, claim, card. */
package spadework.office.aftercare;
