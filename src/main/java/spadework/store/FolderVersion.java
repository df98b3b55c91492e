// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.time.Instant;

/**
 * A state that a folder had.
 *
 * @param count which, from 1
 * @param version what tells it from every other ({@link StoredFolder#version()})
 * @param at when it was written, by the clock of the office's home
 * @param by whose account wrote it
 * @param what paths that were written or deleted, with commas
 */
public record FolderVersion(long count, String version, Instant at, String by, String what) {}
