// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.money.Dollars;
import spadework.office.agreement.Issuing;
import spadework.office.reply.TemplateFolder;
import spadework.press.PageText;

/** A proposal that is issued again says whether the work or the prices moved its price, and by how much each. */
class RevisionReasonTest {
    private static final Pattern PARTS = Pattern.compile(
            "Of this, (−?\\$[\\d,.]+) comes from the changed work and (−?\\$[\\d,.]+) from our changed prices");

    @TempDir
    private Path root;

    private final Office office = Office.with(TemplateFolder.NONE);
    private SampleJobFolder site;

    @BeforeEach
    void issueOnce() throws IOException {
        site = SampleJobFolder.in(root);
        issue();
    }

    @Test
    void aShorterWallIsTheWork() throws IOException {
        shorten();

        assertThat(issue())
                .contains("The work changed, and with it options and unit prices; our price list did not.")
                .doesNotContain("our prices changed;", "Of this,");
    }

    /** Ground that is seeded is in no option of the sample and in no unit price. */
    @Test
    void whatMovedNoOptionAndNoUnitPriceSaysNothingOfThem() throws IOException {
        site.edit(job -> ((ObjectNode) job.get("restoration")).put("seed", "1100 sf"));

        assertThat(issue())
                .contains("The work changed; our price list did not.")
                .doesNotContain("and with it");
    }

    @Test
    void aHigherProfitIsThePrices() throws IOException {
        raiseProfit();

        assertThat(issue())
                .contains("The price moved because our prices changed; the work did not.")
                .doesNotContain("the work changed;", "Of this,");
    }

    @Test
    void bothAreToldApartAndAddToTheDifference() throws IOException {
        Dollars before = total();
        raiseProfit();
        Dollars atNewPrices = total();
        shorten();
        Dollars after = total();

        Matcher parts = PARTS.matcher(issue());

        assertThat(parts.find()).isTrue();
        assertThat(parts.group(1)).isEqualTo(after.minus(atNewPrices).text());
        assertThat(parts.group(2)).isEqualTo(atNewPrices.minus(before).text());
    }

    /** A thicker coat takes from the pail that the coat leaves half full; to leave shrubs alone takes none. */
    @Test
    void anOptionThatUsesWhatIsLeftSaysWhyItsPriceMoved() throws IOException {
        site.edit(job -> {
            ArrayNode options = job.putArray("options");
            ObjectNode thicker = options.addObject().put("label", "OP7").put("title", "Thicker coat");
            thicker.put("why", "It bridges cracks.");
            thicker.putObject("adds")
                    .putArray("finishes")
                    .addObject()
                    .put("wall", "A")
                    .putObject("finish")
                    .put("system", "coating")
                    .put("dryFilm", "80 mil");
            ObjectNode shrubs = options.addObject().put("label", "OP8").put("title", "You move the shrubs");
            shrubs.put("why", "You have time.");
            shrubs.putObject("takesAway").putObject("restoration").put("plants", 6);
        });
        assertThat(issue()).doesNotContain("leaves over");
        shorten();

        assertThat(issue())
                .contains("OP7 uses what this work leaves over of pails and loads bought whole,")
                .doesNotContain("OP7 and OP8 use");
    }

    private void shorten() throws IOException {
        site.edit(job -> ((ObjectNode) job.get("walls").get(0)).put("length", "41 ft"));
    }

    private void raiseProfit() throws IOException {
        site.editCompany(company -> ((ObjectNode) company.get("priceRules")).put("profit", "13%"));
    }

    private Dollars total() {
        office.readBooksAgain();
        return ((Bid) office.bid(site.folder())).proposedQuote().total();
    }

    /** The text of the proposal that is issued. */
    private String issue() throws IOException {
        Outcome.Issued issued = (Outcome.Issued) new Issuing(office, SampleJobFolder.TODAY).issue(site.folder());
        Path paper = site.folder().resolve("for-the-homeowner/" + issued.number() + "-proposal.pdf");
        return PageText.all(Files.readAllBytes(paper)).replaceAll("\\s+", " ");
    }
}
