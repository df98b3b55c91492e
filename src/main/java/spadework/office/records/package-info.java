// SPDX-License-Identifier: Apache-2.0
/** What was signed, read back. */
package spadework.office.records;
