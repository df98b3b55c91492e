// SPDX-License-Identifier: Apache-2.0
/** Sentences by key, so that none stands in code: each package's lie in {@code words.properties} beside it. */
package spadework.wording;
