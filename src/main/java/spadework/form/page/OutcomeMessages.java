package spadework.form.page;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import spadework.finding.Fault;
import spadework.form.kit.Messages;
import spadework.office.Outcome;

/** What came of a step, in words: what the office says stands as the office says it. */
public final class OutcomeMessages {
    private OutcomeMessages() {}

    public static String of(Outcome outcome) {
        if (outcome instanceof Outcome.Issued issued) {
            Path folder = issued.files().isEmpty()
                    ? Path.of("")
                    : issued.files().get(0).getParent();
            return Messages.of("outcome.issued", issued.number(), folder)
                    + lines(issued.files().stream()
                            .map(file -> file.getFileName().toString())
                            .toList());
        }
        if (outcome instanceof Outcome.Standing standing) {
            return Messages.of("outcome.standing", standing.number());
        }
        if (outcome instanceof Outcome.Printed printed) {
            return Messages.of("paper.written", printed.files().get(0));
        }
        if (outcome instanceof Outcome.Faulty faulty) {
            return Messages.of("outcome.faulty", faulty.faults().size())
                    + lines(faulty.faults().stream().map(Fault::text).toList());
        }
        if (outcome instanceof Outcome.Stopped stopped) {
            return Messages.of("outcome.stopped") + lines(stopped.stops());
        }
        return Messages.of("outcome.refused") + lines(((Outcome.Refused) outcome).reasons());
    }

    /** Whether what was asked for stands now. */
    static boolean isDone(Outcome outcome) {
        return outcome instanceof Outcome.Issued
                || outcome instanceof Outcome.Standing
                || outcome instanceof Outcome.Printed;
    }

    private static String lines(List<String> lines) {
        return lines.stream().map(line -> "\n" + line).collect(Collectors.joining());
    }
}
