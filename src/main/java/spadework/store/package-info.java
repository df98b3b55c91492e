// SPDX-License-Identifier: Apache-2.0
/** What an office keeps, folder by folder and whichever home it has: files, versions, the register, search. */
package spadework.store;
