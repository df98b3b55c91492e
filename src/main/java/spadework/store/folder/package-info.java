// SPDX-License-Identifier: Apache-2.0
/** An office at home in folders: what every firm begins with. */
package spadework.store.folder;
