// SPDX-License-Identifier: Apache-2.0
/** The completion statement and the final account. */
package spadework.paperwork.completion;
