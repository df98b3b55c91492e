// SPDX-License-Identifier: Apache-2.0
/**
 * Files that are shared: written whole, one writer at a time, and only over the bytes they were read from. Links are
 * not followed out of a folder. Everything that changes a disk goes through {@link spadework.disk.Disk}.
 */
package spadework.disk;
