// SPDX-License-Identifier: Apache-2.0
package spadework.office.records;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import spadework.finding.Fault;
import spadework.listing.RegisterListing;
import spadework.office.files.RegisterFolders;
import spadework.office.reply.Reply;
import spadework.office.reply.TextColumns;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Examination;
import spadework.register.Register;

/** Looks at registers. */
public final class RegisterService {
    private RegisterService() {}

    /** Examines the registers of jobs; one fault a line. */
    public static Reply check(List<Path> jobs) throws IOException {
        List<String> out = new ArrayList<>();
        List<String> err = new ArrayList<>();
        for (Path job : jobs) {
            Path folder = RegisterFolders.of(job);
            if (!Register.isIn(folder) && Register.of(folder).check().faults().isEmpty()) {
                err.add(RegisterFolders.missing(folder).text());
                continue;
            }
            Examination found = Register.of(folder).check();
            found.faults().stream().map(Fault::text).forEach(err::add);
            found.advice().stream().map(fault -> "note: " + fault.text()).forEach(out::add);
            if (found.faults().isEmpty()) {
                out.add(folder + ": nothing wrong found in " + found.lines() + " lines and " + found.documents()
                        + " documents; seal of the last line " + found.seal());
            }
        }
        return new Reply(out, err, err.isEmpty());
    }

    /** The same, and holds the register of one job to papers that were given out of the house. */
    public static Reply check(Path job, List<Path> papers) throws IOException {
        Reply register = check(List.of(job));
        Path folder = RegisterFolders.of(job);
        List<String> out = new ArrayList<>(register.out());
        List<String> err = new ArrayList<>(register.err());
        for (Path paper : papers) {
            Optional<Fault> fault = PaperCheck.fault(folder, paper);
            fault.map(Fault::text).ifPresent(err::add);
            if (fault.isEmpty()) {
                out.add(paper + ": the register has the line that it was issued under, and names it as it is");
            }
        }
        return new Reply(out, err, err.isEmpty());
    }

    /** Prints what stands in the register of a job. */
    public static Reply list(Path job, boolean json) throws IOException {
        Path folder = RegisterFolders.of(job);
        if (!Register.isIn(folder)) {
            return Reply.refused(List.of(RegisterFolders.missing(folder)));
        }
        List<Entry> entries = new ArrayList<>();
        Examination found = Register.of(folder).each(entries::add);
        List<String> wrong = found.faults().stream().map(Fault::text).toList();
        return Reply.done(json ? List.of(RegisterListing.of(entries)) : table(entries))
                .andWrong(wrong);
    }

    private static List<String> table(List<Entry> entries) {
        return TextColumns.of(entries.stream().map(RegisterService::row).toList());
    }

    private static List<String> row(Entry entry) {
        String facts = entry.facts().entrySet().stream()
                .map(fact -> fact.getKey() + ": " + fact.getValue())
                .collect(Collectors.joining("; "));
        String files = entry.files().stream().map(file -> file.name()).collect(Collectors.joining(", "));
        return List.of(
                String.valueOf(entry.line()),
                entry.on().toString(),
                entry.event().words(),
                entry.number().map(DocumentNumber::text).orElse(""),
                List.of(facts, files).stream().filter(text -> !text.isEmpty()).collect(Collectors.joining("; ")));
    }
}
