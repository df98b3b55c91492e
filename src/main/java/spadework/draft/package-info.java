// SPDX-License-Identifier: Apache-2.0
/**
 * A job or a price book while it is being edited: the file as an immutable tree with its keys in their order, edits by
 * JSON pointer, undo and redo, and what the format allows at each place. It judges nothing; that is {@code intake}'s.
 */
package spadework.draft;
