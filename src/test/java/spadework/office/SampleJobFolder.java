// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import spadework.office.agreement.ConsentInput;
import spadework.office.agreement.SignatureInput;

/** Sample 1 in a folder of its own, with two options, to be issued, accepted, changed and closed. */
public final class SampleJobFolder {
    /** A day after everything that the tests tell of. */
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

    static final LocalDate SIGNED = LocalDate.of(2026, 8, 20);

    private static final Path SAMPLES = Path.of("sample-quotes");
    private static final String SAMPLE = "block-basement-to-swale";
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String SIGNING = """
            {"place": "home", "salesperson": {"name": "Jory Fennimarsh"}, "oldestAge": 58, "specialOrder": "$0.00",
             "subcontractors": [], "dateIsEssential": false, "permits": "We pull the permit."}
            """;
    private static final String RULES = """
            {"packs": [{"state": "OH", "counsel": {"by": "Test Counsel", "on": "2026-06-01"},
              "notices": [{"notice": "excess cost notice", "wording": "Test words for extra cost."}]}]}
            """;

    private final Path root;

    private SampleJobFolder(Path root) {
        this.root = root;
    }

    public static SampleJobFolder in(Path root) {
        try {
            for (String name : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
                Files.copy(SAMPLES.resolve(name), root.resolve(name));
            }
            Path job = Files.createDirectories(root.resolve(SAMPLE));
            try (Stream<Path> files = Files.list(SAMPLES.resolve(SAMPLE))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Files.copy(file, job.resolve(file.getFileName().toString()));
                }
            }
            makeSignable(job);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        SampleJobFolder site = new SampleJobFolder(root);
        site.edit(job -> job.set("options", json("""
                [{"label": "OP1", "title": "Front wall as well", "why": "Dry there too", "adds": {"walls": [%s]}},
                 {"label": "OP2", "title": "More rubber on B", "why": "Thicker",
                  "adds": {"finishes": [{"wall": "B", "finish": {"system": "coating", "dryFilm": "80 mil"}}]}}]
                """.formatted(wall("C", "south", 20)))));
        return site;
    }

    /** What a contract asks for beyond the work, the rules of the state as counsel read them, and a signed paper. */
    public static void makeSignable(Path job) {
        try {
            Files.writeString(job.resolve("signed.pdf"), "a scan");
            Files.writeString(job.resolve("state-rules.json"), RULES);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        edit(job.resolve("job.json"), file -> file.set("signing", json(SIGNING)));
    }

    static String wall(String label, String faces, int feet) {
        return """
                {"label": "%s", "where": "%s wall", "faces": "%s", "from": "0 ft", "length": "%d ft", "depth": "4 ft",
                 "kind": "block", "condition": {"surface": "bare", "cracks": "0 ft", "horizontalCrack": false,
                 "displaced": false, "bow": "0 in", "footingUndermined": false, "tiedToFloor": true},
                 "finish": {"system": "coating", "dryFilm": "60 mil"}}
                """.formatted(label, faces, faces, feet);
    }

    /** The same job with its company and all its records in another place. */
    public SampleJobFolder copy(Path to) {
        try (Stream<Path> all = Files.walk(root)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(root.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        return new SampleJobFolder(to);
    }

    public Path folder() {
        return root.resolve(SAMPLE);
    }

    Path file() {
        return folder().resolve("job.json");
    }

    public void edit(Consumer<ObjectNode> change) {
        edit(file(), change);
    }

    void editCompany(Consumer<ObjectNode> change) {
        edit(root.resolve("company.json"), change);
    }

    private static void edit(Path file, Consumer<ObjectNode> change) {
        try {
            ObjectNode json = (ObjectNode) JSON.readTree(Files.readString(file));
            change.accept(json);
            Files.writeString(file, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(json));
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    public JsonNode json() {
        try {
            return JSON.readTree(Files.readString(file()));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    public static JsonNode json(String text) {
        try {
            return JSON.readTree(text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A change order that adds a wall on the west side, pending. */
    public void addChange(int number) {
        edit(job -> {
            ArrayNode changes = job.has("changes") ? (ArrayNode) job.get("changes") : job.putArray("changes");
            changes.add(change(number));
        });
    }

    /** A change order that adds a wall on the west side. */
    public static JsonNode change(int number) {
        return json("""
                {"number": %d, "title": "One more wall", "issued": "2026-09-12", "reason": "work asked for",
                 "why": "You asked for it", "evidence": "Sketch", "adds": {"walls": [%s]}, "days": 2}
                """.formatted(number, wall("W" + number, "west", 10)));
    }

    /** All that closing needs: what was built, and the balance paid. */
    public void finish(List<String> walls, String paid) {
        edit(job -> finish(job, walls, paid));
    }

    /** The same in the job's own tree. */
    public static void finish(ObjectNode job, List<String> walls, String paid) {
        ObjectNode built = job.putObject("asBuilt").put("started", "2026-09-08").put("finished", "2026-09-25");
        ArrayNode rows = built.putArray("walls");
        walls.forEach(label -> rows.add(json("""
                    {"label": "%s", "length": "10 ft", "depthStart": "4 ft", "depthEnd": "4 ft", "gallons": "30 gal",
                     "holdPoints": [
                       {"point": "A, bare wall", "on": "2026-09-10", "by": "Ida Wrenfield", "waived": "seen in person"},
                       {"point": "B, coated", "on": "2026-09-14", "by": "Ida Wrenfield", "waived": "seen in person"}]}
                    """.formatted(label))));
        built.set("pipes", json("""
                    [{"label": "D1", "length": "72 ft", "startInvert": "92.48 ft", "endInvert": "92.12 ft"},
                     {"label": "M1", "length": "64 ft", "startInvert": "92.10 ft", "endInvert": "91.20 ft"},
                     {"label": "R1", "length": "78 ft", "startInvert": "95.40 ft", "endInvert": "92.00 ft"}]"""));
        built.set("flowTests", json("""
                    [{"on": "2026-09-24", "passed": true, "what": "hose in, swale out", "by": "Ida Wrenfield", "line": "D1"},
                     {"on": "2026-09-24", "passed": true, "what": "hose in, swale out", "by": "Ida Wrenfield", "line": "R1"}]"""));
        job.set("received", json("[{\"on\": \"2026-09-26\", \"amount\": \"%s\", \"how\": \"check\"}]".formatted(paid)));
    }

    public static SignatureInput yes() {
        return on(SIGNED.toString());
    }

    public static SignatureInput on(String day) {
        return by(day, "Ida Wrenfield", "Tobias Wrenfield");
    }

    /** On paper, by those people. */
    public static SignatureInput by(String day, String... names) {
        return new SignatureInput(
                LocalDate.parse(day), List.of(names), Optional.of("signed.pdf"), Optional.empty(), ConsentInput.NONE);
    }

    /** Every file below the job's folder with its bytes as text, to see what changed. */
    Map<String, String> contents() {
        try (Stream<Path> files = Files.walk(folder())) {
            Map<String, String> contents = new TreeMap<>();
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(
                        folder().relativize(file).toString(),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
            return contents;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
