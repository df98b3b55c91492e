// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.Optional;

/**
 * What was done to a job, without limit, and what was undone of it.
 *
 * @param now the draft as it stands
 * @param past the drafts before, latest on top
 * @param future the drafts that were undone, next on top
 * @param saved the draft as the file has it; nothing for one that was never saved
 * @param open where the last edit is still going on, so that a word typed letter by letter is one step; empty when
 *     the next edit is a step of its own
 */
public record History(Draft now, Optional<Steps> past, Optional<Steps> future, Optional<Draft> saved, String open) {

    /** One draft on top of earlier ones. */
    public record Steps(Draft draft, Optional<Steps> below) {}

    /** The history of a draft that was read from its file. */
    public static History ofSaved(Draft draft) {
        return new History(draft, Optional.empty(), Optional.empty(), Optional.of(draft), "");
    }

    /** The history of a draft that has no file yet. */
    public static History ofNew(Draft draft) {
        return new History(draft, Optional.empty(), Optional.empty(), Optional.empty(), "");
    }

    /**
     * The draft after an edit. What is typed and typed back within one step is no step.
     *
     * @param where names the edit that is going on; the same name twice in a row is one step; empty for a whole step
     */
    public History edited(Draft next, String where) {
        if (next.equals(now)) {
            return this;
        }
        boolean same = !where.isEmpty() && where.equals(open);
        if (same && past.filter(step -> step.draft().equals(next)).isPresent()) {
            return new History(past.get().draft(), past.get().below(), Optional.empty(), saved, "");
        }
        Optional<Steps> before = same ? past : Optional.of(new Steps(now, past));
        return new History(next, before, Optional.empty(), saved, where);
    }

    /** Ends the edit that is going on. */
    public History settled() {
        return new History(now, past, future, saved, "");
    }

    public History undone() {
        return past.map(step -> new History(step.draft(), step.below(), Optional.of(new Steps(now, future)), saved, ""))
                .orElse(this);
    }

    public History redone() {
        return future.map(step -> new History(step.draft(), Optional.of(new Steps(now, past)), step.below(), saved, ""))
                .orElse(this);
    }

    /** The draft as it stands is what the file has. */
    public History savedNow() {
        return new History(now, past, future, Optional.of(now), "");
    }

    /** Whether the file has the draft as it stands. */
    public boolean isSaved() {
        return saved.filter(now::equals).isPresent();
    }
}
