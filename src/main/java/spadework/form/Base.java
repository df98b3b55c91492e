package spadework.form;

import java.util.Optional;
import java.util.function.Supplier;
import spadework.draft.Pointer;

/** Where a group of fields stands in the job: always at the same place, or at the row that is chosen in a table. */
final class Base {
    static final Base JOB = new Base(() -> Optional.of(""));

    private final Supplier<Optional<String>> place;

    private Base(Supplier<Optional<String>> place) {
        this.place = place;
    }

    /** The row that is chosen in a table; nowhere while none is. */
    static Base row(Supplier<Optional<String>> chosen) {
        return new Base(chosen);
    }

    /** The place of a key in this group; an empty key stands for the place itself. */
    Optional<String> at(String key) {
        return place.get().map(pointer -> key.isEmpty() ? pointer : pointer + key);
    }

    /** A group inside this one. */
    Base inside(String key) {
        return new Base(() -> at(key));
    }

    /** The place of a row in a list. */
    static String row(String list, int index) {
        return Pointer.of(list, index);
    }
}
