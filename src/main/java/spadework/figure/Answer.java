package spadework.figure;

import java.util.Arrays;
import java.util.List;
import spadework.finding.Finding;
import spadework.working.Working;

/**
 * What a calculator answers.
 *
 * @param values the figures asked for, in the order in which they are told
 * @param working where each of them comes from
 * @param findings what has to be known with it; empty where the figures speak for themselves
 */
public record Answer(List<Value> values, List<Working> working, List<Finding> findings) {

    public Answer {
        values = List.copyOf(values);
        working = List.copyOf(working);
        findings = List.copyOf(findings);
    }

    /** An answer whose figures are these numbers. */
    static Answer of(Working... found) {
        return of(Arrays.asList(found));
    }

    /** An answer whose figures are these numbers. */
    static Answer of(List<? extends Working> found) {
        return new Answer(found.stream().map(Value::of).toList(), List.copyOf(found), List.of());
    }

    /** The same figures, with what has to be known with them. */
    Answer with(List<Finding> more) {
        return new Answer(values, working, more);
    }
}
