// SPDX-License-Identifier: Apache-2.0
/** How contracts usually say a thing, in each language that papers are in. */
package spadework.law.phrase;
