// SPDX-License-Identifier: Apache-2.0
/**
 * What closed jobs really took against what was estimated, and what that says about the rates of the book. It changes
 * no rate; that is the contractor's.
 */
package spadework.feedback;
