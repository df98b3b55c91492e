package spadework.office;

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
public record Told(List<String> out, List<String> err, boolean done) {

    public Told {
        out = List.copyOf(out);
        err = List.copyOf(err);
    }

    static Told done(List<String> out) {
        return new Told(out, List.of(), true);
    }

    static Told refused(List<Fault> faults) {
        return new Told(List.of(), faults.stream().map(Fault::text).toList(), false);
    }

    /** The same with something more that is wrong. */
    Told andWrong(List<String> wrong) {
        return wrong.isEmpty() ? this : new Told(out, Stream.concat(err.stream(), wrong.stream()).toList(), false);
    }
}
