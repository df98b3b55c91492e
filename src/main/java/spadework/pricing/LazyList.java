// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;

/** A list that never changes and is worked out when somebody first looks into it. */
final class LazyList<T> extends AbstractList<T> {
    private Supplier<List<T>> source;
    private List<T> found;

    /** @param source gives the same list whenever it is asked; it is asked once at most */
    LazyList(Supplier<List<T>> source) {
        this.source = source;
    }

    private synchronized List<T> found() {
        if (found == null) {
            found = List.copyOf(source.get());
            source = null;
        }
        return found;
    }

    @Override
    public T get(int index) {
        return found().get(index);
    }

    @Override
    public int size() {
        return found().size();
    }

    /** The list itself where it is still to be worked out, else a copy that nobody can change. */
    static <T> List<T> kept(List<T> list) {
        return list instanceof LazyList<T> ? list : List.copyOf(list);
    }
}
