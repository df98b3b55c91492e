// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.billing.BillItem;
import spadework.money.Dollars;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Closing;
import spadework.office.agreement.ConsentInput;
import spadework.office.agreement.Deciding;
import spadework.office.agreement.Issuing;
import spadework.office.agreement.SignatureInput;
import spadework.office.agreement.SourceCheckout;
import spadework.office.billing.Invoicing;
import spadework.office.billing.Receiving;
import spadework.office.billing.Releasing;
import spadework.office.records.BilledRecord;
import spadework.office.records.JobRecords;
import spadework.office.records.JobSource;
import spadework.office.reply.TemplateFolder;
import spadework.press.page.RecordCode;
import spadework.register.Register;
import spadework.register.SealMark;

/**
 * The samples of a whole job, in English and in Spanish, told again from proposal to warranty by the same steps:
 * the file, the register and every issued document come out as they lie beside the sample. With
 * {@code -Dspadework.refresh=true} they are written there anew.
 */
class SampleStoryTest {
    private static final Path SAMPLES = Path.of("sample-quotes");
    private static final List<String> LATER = List.of("accepted", "changes", "asBuilt", "received", "closed");
    private static final List<String> FOLDERS = List.of("for-the-homeowner", "kept");
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path root;

    private final Office office = Office.with(TemplateFolder.NONE);
    private Path sample;
    private Path job;
    private Path file;
    private ObjectNode described;

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"added-wall-then-closed", "back-wall-in-spanish"})
    void sampleIsWhatItsStepsMakeOfIt(String name) throws IOException {
        sample = SAMPLES.resolve(name);
        described = (ObjectNode) JSON.readTree(Files.readString(sample.resolve("job.json")));
        layOut();
        issue();
        accept();
        bill(1, described.at("/received/0/on").asText());
        pay(0);
        change();
        bill(2, described.at("/received/1/on").asText());
        pay(1);
        bill(3, described.at("/received/2/on").asText());
        pay(2);
        bill(4, described.at("/asBuilt/finished").asText());
        bill(5, described.at("/received/3/on").asText());
        pay(3);
        release();
        close();
        if (Boolean.getBoolean("spadework.refresh")) {
            refresh();
        }
        assertThat(JSON.readTree(Files.readString(file)))
                .isEqualTo(JSON.readTree(Files.readString(sample.resolve("job.json"))));
        assertThat(kept(job)).isEqualTo(kept(sample));
        for (String paper : kept(job)) {
            assertThat(Files.readAllBytes(sample.resolve(paper)))
                    .as(paper)
                    .isEqualTo(Files.readAllBytes(job.resolve(paper)));
        }
        assertThat(Register.of(sample).check().faults()).isEmpty();
    }

    /** The signed contract, printed once more from what lies beside it. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"added-wall-then-closed, 2026-041-A1", "back-wall-in-spanish, 2026-058-A1"})
    void signedContractPrintsAgainFromItsSourceByteForByte(String name, String contract) throws IOException {
        Path lying = SAMPLES.resolve(name);
        JobRecords records =
                new JobRecords(lying.toAbsolutePath(), Register.of(lying).entries());
        JobSource source = records.source(records.contract().orElseThrow()).orElseThrow();
        try (SourceCheckout checkout = SourceCheckout.of(source)) {
            Office then = checkout.office();
            byte[] lies = Files.readAllBytes(lying.resolve("for-the-homeowner/" + contract + "-contract.pdf"));
            SealMark mark = SealMark.in(RecordCode.in(lies).orElseThrow()).orElseThrow();
            Bid bid = (Bid) then.readAndBid(checkout.job());
            byte[] printed =
                    then.issued(bid, EnumSet.of(PaperKind.CONTRACT), mark).get("contract.pdf");
            assertThat(printed).isEqualTo(lies);
        }
    }

    private void layOut() throws IOException {
        for (String name : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(SAMPLES.resolve(name), root.resolve(name));
        }
        job = Files.createDirectory(root.resolve("job"));
        if (Files.exists(sample.resolve("state-rules.json"))) {
            Files.copy(sample.resolve("state-rules.json"), job.resolve("state-rules.json"));
        }
        file = job.resolve("job.json");
        try (Stream<Path> pictures = Files.list(sample)) {
            for (Path picture :
                    pictures.filter(path -> path.toString().endsWith(".jpg")).toList()) {
                Files.copy(picture, job.resolve(picture.getFileName()));
            }
        }
        ObjectNode proposal = described.deepCopy();
        proposal.remove(LATER);
        Files.writeString(file, JSON.writeValueAsString(proposal));
    }

    /** What was accepted in a second revision has a wall B that was first measured 2 ft short. */
    private void issue() throws IOException {
        if (described.at("/accepted/revision").asInt() == 2) {
            edit(json -> {
                json.put("issued", "2026-07-06");
                ((ObjectNode) json.at("/walls/1")).put("length", "24 ft");
            });
            assertThat(new Issuing(office, SampleJobFolder.TODAY).issue(file)).isInstanceOf(Outcome.Issued.class);
            edit(json -> {
                json.set("issued", described.get("issued"));
                ((ObjectNode) json.at("/walls/1")).set("length", described.at("/walls/1/length"));
            });
        }
        assertThat(new Issuing(office, SampleJobFolder.TODAY).issue(file)).isInstanceOf(Outcome.Issued.class);
    }

    private void accept() throws IOException {
        List<String> taken = new ArrayList<>();
        described.at("/accepted/options").forEach(label -> taken.add(label.asText()));
        List<SignatureInput> signatures = yes(described.get("accepted"));
        Outcome last = null;
        for (SignatureInput one : signatures) {
            last = new Accepting(office, SampleJobFolder.TODAY).accept(file, taken, one);
        }
        assertThat(last).isInstanceOf(Outcome.Issued.class);
    }

    private void change() throws IOException {
        for (JsonNode change : described.get("changes")) {
            ObjectNode pending = change.deepCopy();
            pending.remove(List.of("state", "decision"));
            edit(json ->
                    (json.has("changes") ? (ArrayNode) json.get("changes") : json.putArray("changes")).add(pending));
            boolean accepted = change.get("state").asText().equals("accepted");
            List<SignatureInput> signatures = accepted
                    ? yes(change.get("decision"))
                    : List.of(SignatureInput.none(
                            LocalDate.parse(change.get("issued").asText())));
            Outcome last = null;
            for (SignatureInput one : signatures) {
                last = new Deciding(office, SampleJobFolder.TODAY)
                        .decide(file, change.get("number").asInt(), accepted, one);
            }
            assertThat(last).isInstanceOf(Outcome.Issued.class);
        }
    }

    private void close() throws IOException {
        edit(json -> json.set("asBuilt", described.get("asBuilt")));
        LocalDate completed = LocalDate.parse(described.at("/closed/completed").asText());
        assertThat(new Closing(office, SampleJobFolder.TODAY)
                        .close(
                                file,
                                new Closing.Asked(completed.plusDays(1), Optional.of(completed), Optional.empty())))
                .isInstanceOf(Outcome.Issued.class);
    }

    private void bill(int payment, String on) throws IOException {
        assertThat(new Invoicing(office, SampleJobFolder.TODAY)
                        .invoice(file, BillItem.payment(payment), LocalDate.parse(on)))
                .isInstanceOf(Outcome.Issued.class);
    }

    /** Whatever is open is paid, on the day and by the means that the sample tells. */
    private void pay(int row) throws IOException {
        JsonNode received = described.at("/received/" + row);
        Bid bid = (Bid) office.bid(file);
        Dollars open = BilledRecord.of(
                        JobRecords.beside(file),
                        bid.dossier().contract(),
                        bid.dossier().job().agreement().received())
                .ledger()
                .open();
        assertThat(new Receiving(office, SampleJobFolder.TODAY)
                        .receive(
                                file,
                                open,
                                LocalDate.parse(received.get("on").asText()),
                                received.get("how").asText()))
                .isInstanceOf(Outcome.Issued.class);
    }

    private void release() throws IOException {
        assertThat(new Releasing(office, SampleJobFolder.TODAY)
                        .release(
                                file,
                                "I5",
                                true,
                                LocalDate.parse(described.at("/received/3/on").asText())))
                .isInstanceOf(Outcome.Issued.class);
    }

    private static List<SignatureInput> yes(JsonNode signed) {
        List<JsonNode> signatures = new ArrayList<>(List.of(signed.get("signature")));
        signed.path("furtherSignatures").forEach(signatures::add);
        LocalDate on = LocalDate.parse(signed.get("on").asText());
        return signatures.stream()
                .map(one -> yes(on, one, one.has("by") ? one.get("by") : signed.get("by")))
                .toList();
    }

    private static SignatureInput yes(LocalDate on, JsonNode signature, JsonNode names) {
        JsonNode consent = signature.get("electronic");
        List<String> by = new ArrayList<>();
        names.forEach(name -> by.add(name.asText()));
        return new SignatureInput(
                on,
                by,
                Optional.empty(),
                Optional.of(signature.get("typed").asText()),
                new ConsentInput(
                        Optional.of(LocalDate.parse(consent.get("given").asText())),
                        Optional.of(LocalDate.parse(consent.get("disclosed").asText())),
                        Optional.of(consent.get("paper").asText()),
                        Optional.of(consent.get("withdrawal").asText()),
                        Optional.of(consent.get("equipment").asText()),
                        Optional.of(consent.get("access").asText())));
    }

    private void edit(Consumer<ObjectNode> change) throws IOException {
        ObjectNode json = (ObjectNode) JSON.readTree(Files.readString(file));
        change.accept(json);
        Map<String, JsonNode> ordered = new LinkedHashMap<>();
        described
                .fieldNames()
                .forEachRemaining(
                        key -> Optional.ofNullable(json.get(key)).ifPresent(value -> ordered.put(key, value)));
        Files.writeString(file, JSON.createObjectNode().setAll(ordered).toString());
    }

    /** The register and every document, relative to the job's folder. */
    private static TreeSet<String> kept(Path folder) throws IOException {
        TreeSet<String> names = new TreeSet<>(List.of("register.jsonl", "register.head"));
        for (String place : FOLDERS) {
            try (Stream<Path> issued = Files.list(folder.resolve(place))) {
                issued.forEach(path -> names.add(place + "/" + path.getFileName()));
            }
        }
        return names;
    }

    private void refresh() throws IOException {
        for (String place : FOLDERS) {
            Path issued = Files.createDirectories(sample.resolve(place));
            try (Stream<Path> old = Files.list(issued)) {
                for (Path path : old.toList()) {
                    Files.delete(path);
                }
            }
        }
        for (String name : kept(job)) {
            Files.copy(job.resolve(name), sample.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        }
        Files.copy(file, sample.resolve("job.json"), StandardCopyOption.REPLACE_EXISTING);
    }
}
