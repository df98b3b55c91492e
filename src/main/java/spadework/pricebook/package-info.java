/**
 * The contractor's line items: what each is, what drives its quantity, what it takes, who says so and when. It
 * neither measures nor prices a job.
 */
package spadework.pricebook;
