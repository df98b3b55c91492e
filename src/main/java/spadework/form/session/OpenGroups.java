// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Which of the groups that are closed at first somebody has opened. */
public final class OpenGroups {
    private final Set<String> open;
    private final Consumer<Set<String>> changed;

    /**
     * Knows what was left open.
     *
     * @param changed told of all that is open whenever that changes
     */
    public OpenGroups(Set<String> open, Consumer<Set<String>> changed) {
        this.open = new TreeSet<>(open);
        this.changed = changed;
    }

    public boolean has(String name) {
        return open.contains(name);
    }

    /** Remembers that a group was opened or closed. */
    public void keep(String name, boolean isOpen) {
        if (isOpen ? open.add(name) : open.remove(name)) {
            changed.accept(Set.copyOf(open));
        }
    }
}
