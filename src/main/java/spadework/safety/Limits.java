package spadework.safety;

import java.util.Locale;
import spadework.job.LimitKind;

/** A limit's name as a finding carries it. */
final class Limits {
    private Limits() {}

    static String word(LimitKind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
