// SPDX-License-Identifier: Apache-2.0
/** The office and its home: opened by its file, worked in, copied, taken along and brought back. */
package spadework.office.store;
