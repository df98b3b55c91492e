// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import spadework.disk.InsideFolder;
import spadework.job.Job;
import spadework.job.Owners;
import spadework.office.files.FileName;
import spadework.register.DocumentNumber;
import spadework.wording.Wording;

/** Signatures: by the right people, in one way, on a day that was; the file that shows them is kept. */
public final class Signatures {
    private static final Wording WORDS = Wording.beside(Signatures.class);

    private Signatures() {}

    /** What is missing in a signature on a paper of that job. */
    static List<String> reasons(Path file, Job job, SignatureInput yes, LocalDate today) {
        List<String> reasons = new ArrayList<>(future(yes.on(), today, "signed"));
        if (yes.by().isEmpty()) {
            reasons.add(WORDS.get("signatures.nobody-named-who-signed"));
        }
        List<String> strangers = Owners.strangers(job, yes.by());
        if (!strangers.isEmpty()) {
            reasons.add(String.join(" and ", strangers) + " is not named on the job as owner, and nothing says by what"
                    + " right anybody else signs. It is signed by " + String.join(", ", Owners.allowed(job))
                    + ". Correct the name, or write \"signing\", \"signers\": name, right (power of attorney, trustee,"
                    + " executor, guardian) and owner.");
        }
        // Both stand for a name that was drawn on the screen: the file is its picture.
        boolean both = yes.file().isPresent()
                && yes.typed().isPresent()
                && !isPicture(yes.file().get());
        if (both || (yes.file().isEmpty() && yes.typed().isEmpty())) {
            reasons.add(WORDS.get("signatures.say-how-signed-in"));
        }
        yes.typed().ifPresent(typed -> reasons.addAll(typed(yes, typed)));
        for (String name : twice(yes.by())) {
            reasons.add(WORDS.get("signatures.named-twice", name));
        }
        yes.file().flatMap(name -> unkept(file, name)).ifPresent(reasons::add);
        return reasons;
    }

    /** Names of a person who stands among those before it already. */
    private static List<String> twice(List<String> by) {
        return IntStream.range(1, by.size())
                .filter(i -> by.subList(0, i).stream().anyMatch(one -> Owners.isSame(one, by.get(i))))
                .mapToObj(by::get)
                .toList();
    }

    /** Why a file that shows a signature or a notice cannot be kept: not there, or outside the job's folder. */
    static Optional<String> unkept(Path job, String name) {
        Path folder = job.toAbsolutePath().getParent();
        if (!Files.isRegularFile(folder.resolve(name))) {
            return Optional.of(WORDS.get("signatures.there-no-file", folder.resolve(name)));
        }
        return InsideFolder.isFile(folder, name)
                ? Optional.empty()
                : Optional.of(WORDS.get("signatures.file-elsewhere", name, folder));
    }

    private static boolean isPicture(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith(".png");
    }

    private static List<String> typed(SignatureInput yes, String typed) {
        List<String> reasons = new ArrayList<>();
        if (yes.by().size() > 1) {
            reasons.add(WORDS.get("signatures.typed-name-signs-for", yes.by().size()));
        } else if (yes.by().size() == 1 && !Owners.isSame(typed, yes.by().get(0))) {
            reasons.add(WORDS.get("signatures.name-as-typed", typed, yes.by().get(0)));
        }
        List<String> missing = yes.consent().missing();
        if (!missing.isEmpty()) {
            reasons.add(WORDS.get("signatures.typed-name-needs-what", String.join("; ", missing)));
        }
        yes.consent().whole().ifPresent(consent -> {
            if (consent.disclosed().isAfter(consent.given())) {
                reasons.add(WORDS.get("signatures.statement-shown-on", consent.disclosed(), consent.given()));
            }
            if (consent.given().isAfter(yes.on())) {
                reasons.add(WORDS.get("signatures.consent-given-on", consent.given(), yes.on()));
            }
        });
        return reasons;
    }

    /** A day that has not come cannot be the day of anything that was done. */
    public static List<String> future(LocalDate on, LocalDate today, String done) {
        return on.isAfter(today) ? List.of(WORDS.get("signatures.cannot-have-been", done, on, today, done)) : List.of();
    }

    /** Puts the signed paper among the files that are kept. */
    static void keep(Map<String, byte[]> files, DocumentNumber number, Path file, SignatureInput yes)
            throws IOException {
        keep(files, number.text() + "-signature", file, yes);
    }

    /** The same under a name of its own. */
    static void keep(Map<String, byte[]> files, String as, Path file, SignatureInput yes) throws IOException {
        if (yes.file().isPresent()) {
            String name = yes.file().get();
            int point = name.lastIndexOf('.');
            String ending = point < 0 ? "" : name.substring(point).replaceAll("[^A-Za-z0-9.]", "");
            files.put(
                    FileName.safe(as) + ending,
                    Files.readAllBytes(
                            InsideFolder.existing(file.toAbsolutePath().getParent(), name)));
        }
    }
}
