// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.disk.ChangedElsewhere;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.draft.DraftValue.Entries;
import spadework.draft.FileSchema;
import spadework.draft.Pointer;
import spadework.draft.UsualJob;

/** The kinds of job that a company does again and again: its own file among its jobs, or those of the program. */
public final class UsualJobs {
    private static final String FILE = "usual-jobs.json";
    private static final String COMPANY = "company.json";
    private static final String LIST = "/usualJobs";
    private static final String STATE = "/address/state";

    private UsualJobs() {}

    /**
     * Those for a job that lies there, with the state in which the company works; the first is what most jobs are.
     *
     * @param near folder of the jobs, of a job, or above
     * @throws IOException if the company's file of them cannot be read or understood
     */
    public static List<UsualJob> near(Path near) throws IOException {
        Optional<Path> own = above(near, FILE);
        String text = own.isPresent() ? Files.readString(own.get()) : bundled();
        List<UsualJob> jobs = read(text);
        if (jobs.isEmpty()) {
            throw new IOException(own.map(Path::toString).orElse(FILE)
                    + " does not hold a list \"usualJobs\", each with \"name\", \"written\", and \"assumed\".");
        }
        String state = state(near);
        return jobs.stream()
                .map(job ->
                        new UsualJob(job.name(), job.written(), job.assumed().typed("/site/address/state", state)))
                .toList();
    }

    /**
     * Keeps one more among the company's own, or the same name anew.
     *
     * @param jobs folder in which the company's file lies
     * @throws IOException if it cannot be written, or somebody else wrote it meanwhile
     */
    public static void keep(Path jobs, UsualJob kept) throws IOException {
        Path file = above(jobs, COMPANY)
                .map(company -> company.resolveSibling(FILE))
                .orElse(jobs.toAbsolutePath().resolve(FILE));
        Snapshot before = Snapshot.of(file);
        List<UsualJob> all = new ArrayList<>(read(before.text().orElse(bundled())));
        all.removeIf(job -> job.name().equals(kept.name()));
        all.add(0, kept);
        Draft written = new Draft(new Entries(Map.of()), FileSchema.job());
        for (int i = 0; i < all.size(); i++) {
            String row = Pointer.of(LIST, i);
            written = (i == 0 ? written.with(LIST, new DraftValue.Rows(List.of())) : written)
                    .inserted(LIST, i, new Entries(Map.of()))
                    .with(row + "/name", new DraftValue.Text(all.get(i).name()))
                    .with(row + "/written", all.get(i).written().root())
                    .with(
                            row + "/assumed",
                            all.get(i).assumed().without("/site/address/state").root());
        }
        try {
            SharedFile.replace(file, before, written.text().getBytes(StandardCharsets.UTF_8));
        } catch (ChangedElsewhere changed) {
            throw new IOException(file + " was changed meanwhile.", changed);
        }
    }

    private static List<UsualJob> read(String text) {
        List<UsualJob> jobs = new ArrayList<>();
        Optional<Draft> file = Draft.read(text);
        for (int i = 0; file.isPresent() && i < file.get().rows(LIST); i++) {
            String row = Pointer.of(LIST, i);
            String name = file.get().shown(row + "/name");
            Optional<Draft> written = part(file.get(), row + "/written");
            Optional<Draft> assumed = part(file.get(), row + "/assumed");
            if (name.isEmpty() || written.isEmpty() || assumed.isEmpty()) {
                return List.of();
            }
            jobs.add(new UsualJob(name, written.get(), assumed.get()));
        }
        return jobs;
    }

    private static Optional<Draft> part(Draft file, String place) {
        return file.at(place)
                .filter(Entries.class::isInstance)
                .map(value -> new Draft((Entries) value, FileSchema.job()))
                .flatMap(draft -> Draft.read(draft.text()));
    }

    private static Optional<Path> above(Path near, String name) {
        Path at = near.toAbsolutePath().normalize();
        while (at != null) {
            if (Files.isRegularFile(at.resolve(name))) {
                return Optional.of(at.resolve(name));
            }
            at = at.getParent();
        }
        return Optional.empty();
    }

    /** Where the company is at home; empty where nobody says. */
    private static String state(Path near) throws IOException {
        Optional<Path> company = above(near, COMPANY);
        return company.isEmpty()
                ? ""
                : Draft.read(Files.readString(company.get()))
                        .map(read -> read.shown(STATE))
                        .orElse("");
    }

    private static String bundled() throws IOException {
        try (InputStream in = UsualJobs.class.getResourceAsStream("/spadework/office/usual-jobs.json")) {
            if (in == null) {
                throw new IOException("the program lacks usual-jobs.json");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
