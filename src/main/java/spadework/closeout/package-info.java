// SPDX-License-Identifier: Apache-2.0
/**
 * The end of the work: what was built against what was agreed, the film that went on the wall, the final account, and
 * what still keeps the warranty from being issued.
 */
package spadework.closeout;
