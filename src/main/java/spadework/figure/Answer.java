// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.Arrays;
import java.util.List;
import spadework.finding.Finding;
import spadework.working.Working;

/**
 * What a calculator answers.
 *
 * @param values what was asked for, in the order in which it is given
 * @param working where each number comes from
 * @param rules the rules of law that were applied; empty for what is no matter of law
 * @param findings what has to be known with it; empty where the figures speak for themselves
 */
public record Answer(List<AnswerValue> values, List<Working> working, List<Applied> rules, List<Finding> findings) {

    public Answer {
        values = List.copyOf(values);
        working = List.copyOf(working);
        rules = List.copyOf(rules);
        findings = List.copyOf(findings);
    }

    /** An answer whose figures are these numbers. */
    static Answer of(Working... found) {
        return of(Arrays.asList(found));
    }

    /** An answer whose figures are these numbers. */
    static Answer of(List<? extends Working> found) {
        return new Answer(found.stream().map(AnswerValue::of).toList(), List.copyOf(found), List.of(), List.of());
    }

    /** An answer that the law gives. */
    static Answer lawful(List<AnswerValue> values, List<Applied> rules, List<Finding> findings) {
        return new Answer(values, List.of(), rules, findings);
    }

    /** The same figures, with what has to be known with them. */
    Answer with(List<Finding> more) {
        return new Answer(values, working, rules, more);
    }
}
