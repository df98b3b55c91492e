// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spadework.job.Accepted;
import spadework.job.Decision;
import spadework.job.Job;
import spadework.job.Owners;
import spadework.job.Signature;
import spadework.office.records.JobRecords;
import spadework.register.DocumentNumber;
import spadework.register.Entry;

/**
 * The signatures on one paper, in the order in which they came in.
 *
 * @param missing who has still to sign
 * @param taken labels of the options that those who signed took
 */
public record SignatureList(List<One> all, List<String> missing, Set<String> taken) {
    /** Of a paper that nobody signed, or that nobody signs. */
    static final SignatureList NONE = new SignatureList(List.of(), List.of(), Set.of());

    public SignatureList {
        all = List.copyOf(all);
        missing = List.copyOf(missing);
        taken = Set.copyOf(taken);
    }

    /**
     * One of them.
     *
     * @param by who signed
     * @param file the signed paper, in the job's folder
     * @param typed the name as typed, where there is no paper
     */
    public record One(String by, LocalDate on, Optional<String> file, Optional<String> typed) {}

    /** Those that came in one by one while others are missing. */
    static SignatureList gathered(JobRecords records, DocumentNumber paper, Job job) {
        List<One> all = new ArrayList<>();
        List<String> names = new ArrayList<>();
        Set<String> taken = new TreeSet<>();
        for (Entry entry : records.signatures(paper)) {
            String by = entry.fact("by").orElse("");
            all.add(new One(by, entry.on(), entry.fact("file"), entry.fact("typed")));
            names.addAll(List.of(by.split("; ")));
            entry.fact("chosen")
                    .filter(chosen -> !chosen.isEmpty())
                    .ifPresent(chosen -> taken.addAll(List.of(chosen.split(", "))));
        }
        return all.isEmpty() ? NONE : new SignatureList(all, Owners.missing(job, names), taken);
    }

    /** Those of a contract. */
    static SignatureList of(Accepted yes) {
        return of(yes.by(), yes.on(), yes.signatures());
    }

    /** Those of a change order. */
    static SignatureList of(Decision yes) {
        return of(yes.by(), yes.on(), yes.signatures());
    }

    private static SignatureList of(List<String> by, LocalDate on, List<Signature> signatures) {
        List<One> all = signatures.stream()
                .map(one -> new One(String.join("; ", one.by().isEmpty() ? by : one.by()), on, one.file(), one.typed()))
                .toList();
        return new SignatureList(all, List.of(), Set.of());
    }

    boolean hasTaken(String option) {
        return taken.contains(option);
    }
}
