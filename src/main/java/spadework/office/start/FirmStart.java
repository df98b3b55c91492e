// SPDX-License-Identifier: Apache-2.0
package spadework.office.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.finding.Fault;
import spadework.office.files.JobsFolder;
import spadework.office.reply.Reply;
import spadework.wording.Wording;

/** Starts a firm: a folder with the company's file, a price book that starts from the bundled one, and the formats. */
public final class FirmStart {
    private static final Wording WORDS = Wording.beside(FirmStart.class);

    /** What nobody but the firm knows, by its place in the company's file, each with how it is asked for. */
    private static final Map<String, String> PARTICULARS = particulars();

    private FirmStart() {}

    private static Map<String, String> particulars() {
        Map<String, String> asked = new LinkedHashMap<>();
        asked.put("name", WORDS.get("firm-start.name-your-company"));
        asked.put("phone", "Phone");
        asked.put("email", "E-mail");
        asked.put("address/street", "Street");
        asked.put("address/city", "City");
        asked.put("address/state", "State, two letters");
        asked.put("address/zip", "ZIP code");
        asked.put("license/label", WORDS.get("firm-start.license-as-called-in"));
        asked.put("license/number", "License number");
        asked.put("insurance/carrier", "Insurance company");
        asked.put("insurance/policy", "Policy number");
        asked.put("insurance/limits", WORDS.get("firm-start.limits-as-for-each"));
        asked.put("insurance/until", "Insured until, as 2027-03-31");
        return asked;
    }

    /** What is still to be asked, by its place, with how it is asked for. */
    public static Map<String, String> open(Map<String, String> given) {
        Map<String, String> open = new LinkedHashMap<>(PARTICULARS);
        given.keySet().forEach(open::remove);
        return open;
    }

    /**
     * Writes the files of a firm. Whoever has some already keeps them: then nothing is written.
     *
     * @param given values by their place in the company's file, as {@code address/city}
     * @throws IOException if a file cannot be written
     */
    public static Reply firm(Path folder, Map<String, String> given) throws IOException {
        if (Files.exists(folder.resolve("company.json"))) {
            return new Reply(List.of(), List.of(folder.resolve("company.json") + " is there already."), false);
        }
        Draft company = Draft.read(JobsFolder.startOfCompany()).orElseThrow();
        company = company.with("/$schema", new DraftValue.Text("schemas/company.schema.json"));
        for (Map.Entry<String, String> value : given.entrySet()) {
            company = company.with("/" + value.getKey(), new DraftValue.Text(value.getValue()));
        }
        List<Fault> faults = JobsFolder.faultsOfCompany(company.text());
        if (!faults.isEmpty()) {
            return Reply.refused(faults);
        }
        List<Path> written = new ArrayList<>(JobsFolder.open(folder, company.text()));
        written.addAll(JobsFolder.schemas(folder));
        List<String> out = new ArrayList<>(written.stream().map(Path::toString).toList());
        out.add(WORDS.get("firm-start.wages-machines-prices-and"));
        out.add("Next: spadework new job " + folder.resolve("first-job"));
        return Reply.done(out);
    }

    /** The nearest folder with a company's file, from a folder upward. */
    static Optional<Path> near(Path folder) {
        for (Path above = folder.toAbsolutePath().normalize(); above != null; above = above.getParent()) {
            if (Files.isRegularFile(above.resolve("company.json"))) {
                return Optional.of(above);
            }
        }
        return Optional.empty();
    }
}
