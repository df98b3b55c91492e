// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.bids.BidStatus;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;
import spadework.paperwork.cost.AgreedMargin;
import spadework.paperwork.cost.CostSheet;
import spadework.paperwork.cost.CostSheetPaper;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Register;
import spadework.samples.GeneratedJobsFolder;

/** What is told across a tree of bids is what reading them one by one tells. */
class BidsServiceTest {
    private static final LocalDate ON = LocalDate.of(2026, 10, 1);

    @TempDir
    static Path root;

    private static List<Path> jobs;

    @BeforeAll
    static void make() throws IOException {
        GeneratedJobsFolder.make(root, 40);
        try (Stream<Path> all = Files.walk(root)) {
            jobs = all.filter(file -> file.endsWith("job.json")).sorted().toList();
        }
        assertThat(jobs).hasSize(40);
    }

    private static JsonNode json(Reply answered) throws IOException {
        assertThat(answered.err()).isEmpty();
        return new ObjectMapper().readTree(String.join("\n", answered.out()));
    }

    @Test
    void everyBidStandsWithWhatItsOwnReadingTells() throws IOException {
        JsonNode rows =
                json(BidsService.list(root, ON, BidsService.Wanted.ALL, true)).get("bids");
        Office office = Office.with(TemplateFolder.NONE);
        assertThat(rows).hasSize(jobs.size());
        for (int i = 0; i < jobs.size(); i++) {
            Bid bid = (Bid) office.bid(jobs.get(i));
            JsonNode row = rows.get(i);
            assertThat(row.get("file").asText()).isEqualTo(jobs.get(i).toString());
            assertThat(row.get("number").asText()).isEqualTo(bid.dossier().job().number());
            assertThat(row.get("total").asText()).isEqualTo(bid.total().plain());
            CostSheet sheet = CostSheetPaper.of(bid.dossier(), bid.quote());
            assertThat(row.get("margin").asText() + "%")
                    .isEqualTo(sheet.agreed()
                            .map(AgreedMargin::share)
                            .orElse(sheet.price().margin()));
            assertThat(row.get("status").asText()).isEqualTo(standing(jobs.get(i)));
            assertThat(row.get("age").asLong())
                    .isEqualTo(ON.toEpochDay() - bid.dossier().job().issued().toEpochDay());
        }
        assertThat(rows.findValuesAsText("status")).contains("draft", "issued", "accepted", "lost");
    }

    private static String standing(Path job) throws IOException {
        List<Event> events = new ArrayList<>();
        if (Register.isIn(job.getParent())) {
            Register.of(job.getParent()).entries().stream().map(Entry::event).forEach(events::add);
        }
        return events.contains(Event.CONTRACT_SIGNED)
                ? "accepted"
                : events.contains(Event.PROPOSAL_DECLINED)
                        ? "lost"
                        : events.contains(Event.PROPOSAL_ISSUED) ? "issued" : "draft";
    }

    @Test
    void everyUseOfAnItemIsTold() throws IOException {
        JsonNode uses = json(BidsService.history("STONE-MACH", root, true)).get("uses");
        Office office = Office.with(TemplateFolder.NONE);
        List<String> expected = new ArrayList<>();
        for (Path job : jobs) {
            Bid bid = (Bid) office.bid(job);
            bid.quote().lines().stream()
                    .filter(line -> line.code().equals("STONE-MACH"))
                    .forEach(line -> expected.add(job + " " + line.quantity() + " "
                            + line.unitPrice().plain() + " " + line.price().plain()));
        }
        List<String> answered = new ArrayList<>();
        uses.forEach(use -> answered.add(
                use.get("file").asText() + " " + use.get("quantity").asText() + " "
                        + use.get("unitPrice").asText() + " " + use.get("price").asText()));
        assertThat(answered).isEqualTo(expected).hasSizeGreaterThan(30);
    }

    @Test
    void onlyBidsWithAllWordsAreTold() throws IOException {
        List<String> sump = BidsService.list(root, ON, new BidsService.Wanted(Optional.empty(), List.of("SUMP")), false)
                .out();
        assertThat(sump).isNotEmpty().hasSizeLessThan(jobs.size());
        assertThat(BidsService.list(root, ON, new BidsService.Wanted(Optional.empty(), List.of("sump", "J-1")), false)
                        .out())
                .hasSizeLessThan(sump.size());
        assertThat(BidsService.list(root, ON, new BidsService.Wanted(Optional.empty(), List.of("no such word")), false)
                        .out())
                .isEmpty();
    }

    @Test
    void onlyBidsThatStandSoAreTold() throws IOException {
        for (BidStatus standing : List.of(BidStatus.ISSUED, BidStatus.ACCEPTED, BidStatus.LOST)) {
            assertThat(BidsService.list(root, ON, new BidsService.Wanted(Optional.of(standing), List.of()), false)
                            .out())
                    .hasSize(4)
                    .allMatch(row -> row.contains(standing.name().toLowerCase(Locale.ROOT)));
        }
        assertThat(BidsService.list(root, ON, new BidsService.Wanted(Optional.of(BidStatus.ISSUED), List.of()), false)
                        .out())
                .allMatch(row -> row.contains("expired 2026-"));
    }

    @Test
    void jobWithFaultsIsLeftOutAndTold(@TempDir Path other) throws IOException {
        GeneratedJobsFolder.make(other, 3);
        Path faulty = other.resolve("000/J-00001/job.json");
        Files.writeString(faulty, Files.readString(faulty).replaceFirst("\"number\"", "\"nmber\""));
        Reply answered = BidsService.list(other, ON, BidsService.Wanted.ALL, false);
        assertThat(answered.out()).hasSize(2);
        assertThat(answered.err()).containsExactly(faulty + ": left out, 2 to fix; see: spadework check " + faulty);
        assertThat(answered.done()).isFalse();
    }
}
