// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import spadework.intake.Intake;
import spadework.intake.law.StateRuleBook;
import spadework.job.AfterAcceptance;
import spadework.job.Job;
import spadework.press.template.Templates;
import spadework.register.Sha256;

/** Short marks that tell whether two sets of papers were made from the same. */
public final class Fingerprint {
    private static final int LETTERS = 16;

    private Fingerprint() {}

    /** Of all that a proposal is made from: what may be agreed of the job, company, books and templates. */
    static String of(Path file, Job job, Templates templates) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        add(all, AfterAcceptance.agreedPart(job).toString());
        for (Map.Entry<String, Path> beside : Intake.filesOf(file).entrySet()) {
            add(all, beside.getKey());
            all.write(Files.readAllBytes(beside.getValue()));
        }
        all.write(Intake.bundledBookFile());
        all.write(StateRuleBook.bundledFile());
        add(all, of(templates));
        return mark(all);
    }

    /** Of the templates: which words and shapes print. */
    static String of(Templates templates) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        templates.texts().forEach((path, text) -> {
            add(all, path);
            add(all, text);
        });
        return mark(all);
    }

    private static void add(ByteArrayOutputStream all, String text) {
        all.writeBytes(text.getBytes(StandardCharsets.UTF_8));
        all.write(0);
    }

    private static String mark(ByteArrayOutputStream all) {
        return Sha256.of(all.toByteArray()).substring(0, LETTERS);
    }
}
