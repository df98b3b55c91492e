// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import spadework.form.kit.Messages;
import spadework.office.Outcome;
import spadework.office.OutcomeText;

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
        if (outcome instanceof Outcome.Printed printed) {
            return Messages.of("paper.written", printed.files().get(0));
        }
        OutcomeText text = text(outcome);
        return text.head() + lines(text.lines());
    }

    private static OutcomeText text(Outcome outcome) {
        return OutcomeText.of(outcome, Messages.of("outcome.undone"), Messages.of("outcome.answered"));
    }

    /** Whether what was asked for stands now. */
    public static boolean isDone(Outcome outcome) {
        return text(outcome).done();
    }

    private static String lines(List<String> lines) {
        return lines.stream().map(line -> "\n" + line).collect(Collectors.joining());
    }
}
