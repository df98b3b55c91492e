// SPDX-License-Identifier: Apache-2.0
package spadework.office.reply;

import java.util.List;
import java.util.stream.Stream;
import spadework.finding.Fault;

/**
 * What a command has to say.
 *
 * @param out its answer
 * @param err what keeps it from being done, or what has to be known with it
 * @param done whether all was done that was asked for, and nothing is wrong
 */
public record Reply(List<String> out, List<String> err, boolean done) {

    public Reply {
        out = List.copyOf(out);
        err = List.copyOf(err);
    }

    public static Reply done(List<String> out) {
        return new Reply(out, List.of(), true);
    }

    public static Reply refused(List<Fault> faults) {
        return new Reply(List.of(), faults.stream().map(Fault::text).toList(), false);
    }

    /** The same with something more that is wrong. */
    public Reply andWrong(List<String> wrong) {
        return wrong.isEmpty()
                ? this
                : new Reply(out, Stream.concat(err.stream(), wrong.stream()).toList(), false);
    }
}
