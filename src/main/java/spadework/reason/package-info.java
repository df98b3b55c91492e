// SPDX-License-Identifier: Apache-2.0
/** Why something could not be done, in a sentence. */
package spadework.reason;
