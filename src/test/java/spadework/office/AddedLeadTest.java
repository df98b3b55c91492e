// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.contract.Contracting;
import spadework.job.Agreement;
import spadework.job.Agreements;
import spadework.job.Alteration;
import spadework.job.Change;
import spadework.job.ChangeReason;
import spadework.job.ChangeState;
import spadework.job.Condition;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Surface;
import spadework.job.Wall;
import spadework.paperwork.Dossier;
import spadework.press.PageText;
import spadework.press.template.Templates;
import spadework.safety.LeadPaint;
import spadework.samples.Samples;

/** A change that brings the first wall with old paint says so, and its pamphlet is receipted (40 CFR 745.84(a)). */
class AddedLeadTest {

    @ParameterizedTest(name = "house of {0}, contract {1}, added wall {2}: told {3}")
    @CsvSource({
        "1977, BARE, PAINTED, true",
        "1978, BARE, PAINTED, false",
        ", BARE, UNKNOWN, true",
        "1977, BARE, BARE, false",
        "1977, COATED, PAINTED, false"
    })
    void onlyTheFirstSuchWallOfAnOldHouseIsTold(Integer year, Surface agreed, Surface added, boolean told) {
        Job before = Jobs.job(
                Jobs.builtIn(Jobs.site(), Optional.ofNullable(year)), Jobs.water(), faced(Jobs.wall(), agreed));
        assertThat(LeadPaint.added(before, adding(added)).stream().map(finding -> finding.about()))
                .isEqualTo(told ? List.of("F") : List.of());
    }

    @Test
    void itsPageSaysItAndHasAPlaceForTheDayOfThePamphlet() throws IOException {
        assertThat(page(Surface.PAINTED))
                .contains(
                        "The old coating on wall F may hold lead.",
                        "hand you its pamphlet first",
                        "Lead pamphlet received on");
        assertThat(page(Surface.BARE))
                .contains("Who Signature Printed name Date")
                .doesNotContain("pamphlet");
    }

    /** The page of a change to the stone house of 1896, whose walls are bare. */
    private static String page(Surface added) throws IOException {
        Bid stone = Samples.bid(Path.of("sample-quotes/stone-wall-engineer-first"));
        Dossier d = stone.proposed();
        Change change = new Change(
                1,
                "Front wall added",
                LocalDate.of(2026, 9, 8),
                ChangeReason.WORK_ASKED_FOR,
                "You asked for it",
                "Seen on site",
                List.of(),
                adding(added),
                List.of(),
                1,
                ChangeState.PENDING,
                Optional.empty());
        Agreement agreement = new Agreement(
                d.job().agreement().signing(),
                List.of(),
                Optional.of(Agreements.accepted(List.of(), List.of())),
                List.of(change),
                List.of(),
                Optional.empty(),
                Optional.empty());
        Job job = Agreements.with(d.job(), agreement);
        Dossier changed = new Dossier(
                job,
                d.company(),
                d.book(),
                d.takeoff(),
                Contracting.of(job, d.company(), d.book(), stone.proposedQuote()),
                d.law(),
                d.revision(),
                d.findings(),
                d.phrases(),
                d.terms(),
                d.homeowner(),
                d.photos());
        Bid bid = new Bid(changed, changed, changed, stone.proposedQuote(), stone.proposedQuote());
        Map<String, byte[]> papers =
                new PaperPrinter(Templates.bundled()).print(bid, EnumSet.of(PaperKind.CHANGE_ORDER));
        return PageText.all(papers.get("change-order-1.pdf")).replaceAll("\\s+", " ");
    }

    private static Alteration adding(Surface surface) {
        return Agreements.adding(faced(Agreements.wall("F", 20).walls().get(0), surface));
    }

    private static Wall faced(Wall wall, Surface surface) {
        Condition c = Jobs.sound();
        return Jobs.with(
                wall, new Condition(surface, c.cracks(), false, false, c.bow(), false, c.tiedToFloor(), c.unseen()));
    }
}
