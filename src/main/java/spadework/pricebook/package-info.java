// SPDX-License-Identifier: Apache-2.0
/**
 * The contractor's line items: what each is, what drives its quantity, what it takes, who says so and when. It
 * neither measures nor prices a job.
 */
package spadework.pricebook;
