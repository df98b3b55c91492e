// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.closeout.Account;
import spadework.closeout.AppliedFilm;
import spadework.closeout.BalanceWaiver;
import spadework.closeout.BuiltJob;
import spadework.closeout.CloseChecks;
import spadework.closeout.OpenEvidence;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.office.Bid;
import spadework.paperwork.Dossier;
import spadework.schedule.DayQuantities;

/** What the scope asks for and the record lacks is open: on the completion statement, and at closing. */
class OpenEvidenceTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    @ParameterizedTest(name = "{0}")
    @CsvSource({"added-wall-then-closed", "back-wall-in-spanish"})
    void theClosedSamplesLackNothing(String sample) {
        Dossier agreed = Samples.bid(Path.of("sample-quotes", sample)).dossier();

        assertThat(OpenEvidence.of(agreed.job(), films(agreed))).isEqualTo(new OpenEvidence(List.of(), List.of()));
    }

    /** The gauge is read on each coat. */
    @ParameterizedTest(name = "second coat {0}")
    @CsvSource({"unread, true", "read, false"})
    void aCoatThatWasNotReadIsOpen(String second, boolean open) throws IOException {
        Dossier agreed = built(record -> {
            if (second.equals("unread")) {
                ((ObjectNode) record.at("/walls/0/coats/1")).putArray("wet");
            }
        });

        assertThat(OpenEvidence.of(agreed.job(), films(agreed)).gauge()).isEqualTo(open ? List.of("A") : List.of());
        assertThat(closing(agreed).contains("close-gauge-not-read")).isEqualTo(open);
    }

    /** Two downspouts share the roof line R1: each has its own test. */
    @ParameterizedTest(name = "{0}, passed {1}: open {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "Manguera en la bajante DS1, agua en O2. | true | DS2",
                "Manguera en las bajantes DS1 y DS2, agua en O2. | true | ",
                "Manguera en cada bajante, agua en O2. | true | ",
                "Hose in each downspout in turn. | true | ",
                "Manguera en las bajantes DS1 y DS2, no salió agua. | false | DS1 DS2",
                "Manguera en la bajante DS12. | true | DS1 DS2"
            })
    void aDownspoutWithoutItsTestIsOpen(String what, boolean passed, String open) throws IOException {
        Dossier agreed = built(record ->
                ((ObjectNode) record.at("/flowTests/1")).put("what", what).put("passed", passed));

        assertThat(OpenEvidence.of(agreed.job(), films(agreed)).downspouts())
                .isEqualTo(open == null ? List.of() : List.of(open.split(" ")));
        assertThat(closing(agreed).contains("close-downspout-not-tested")).isEqualTo(open != null);
    }

    /** Open evidence is told at closing and does not keep the job open: older records have none of it. */
    @Test
    void itKeepsNoJobOpen() throws IOException {
        Dossier agreed = built(record -> ((ObjectNode) record.at("/walls/0")).remove("coats"));

        assertThat(findings(agreed))
                .filteredOn(finding -> finding.id().equals("close-gauge-not-read"))
                .singleElement()
                .matches(finding -> !CloseChecks.isOpen(finding));
    }

    private static Dossier built(Consumer<ObjectNode> spoil) throws IOException {
        Path file = Samples.SPANISH.resolve("job.json");
        ObjectNode job = (ObjectNode) JSON.readTree(Files.readString(file));
        spoil.accept((ObjectNode) job.get("asBuilt"));
        return ((Bid) Samples.office().bid(JSON.writeValueAsString(job), file)).dossier();
    }

    private static List<String> closing(Dossier agreed) {
        return findings(agreed).stream().map(Finding::id).toList();
    }

    private static List<Finding> findings(Dossier agreed) {
        Account account = Account.of(agreed.contract(), agreed.job().agreement().received());
        return CloseChecks.of(agreed.job(), films(agreed), account, new BalanceWaiver(Optional.empty()));
    }

    private static List<AppliedFilm> films(Dossier agreed) {
        Job done = BuiltJob.of(agreed.job());
        return AppliedFilm.of(done, agreed.book(), DayQuantities.takeoff(done, agreed.company(), agreed.book()));
    }
}
