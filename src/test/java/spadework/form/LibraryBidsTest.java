// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JTabbedPane;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.form.library.LibraryTab;
import spadework.office.book.BookService;
import spadework.office.portfolio.BidsService;
import spadework.office.reply.Reply;
import spadework.samples.GeneratedJobsFolder;

/** Old bids in the window are those that the commands list; they are opened, copied and priced anew. */
@WindowTest
class LibraryBidsTest {
    private static final int USED = 2;
    private static final int REPRICE = 1;
    private static final LocalDate TODAY = OnScreen.TODAY;

    @TempDir
    Path root;

    private Path tree;
    private Path job;

    @BeforeEach
    void make() throws IOException {
        tree = root.resolve("jobs");
        GeneratedJobsFolder.make(tree, 10);
        job = tree.resolve("000/J-00000/job.json");
    }

    private LibraryRobot open(OnScreen screen, LibraryTab tab) {
        screen.remembered().folder = Optional.of(tree);
        screen.open(() -> screen.forms().openJob(job));
        screen.settle();
        return LibraryRobot.open(screen, tab);
    }

    private static List<String> flat(Reply reply) {
        return reply.out().stream().map(line -> line.replaceAll(" +", " ")).toList();
    }

    private static List<JobWindow> windows() {
        return Stream.of(Window.getWindows())
                .filter(window -> window.isDisplayable() && window instanceof JobWindow)
                .map(JobWindow.class::cast)
                .toList();
    }

    @Test
    void bidsAreThoseOfTheCommandAndAreFoundByWords() throws IOException {
        try (OnScreen screen = new OnScreen()) {
            LibraryRobot hand = open(screen, LibraryTab.BIDS);
            Reply answered = BidsService.list(tree, TODAY, BidsService.Wanted.ALL, false);
            assertThat(bids(hand)).isEqualTo(flat(answered)).hasSize(10);
            assertThat(hand.cells("library.bids"))
                    .extracting(row -> row.get(1))
                    .contains("draft", "issued", "accepted", "lost");
            hand.type("bids.find", "sump");
            screen.settle();
            assertThat(bids(hand))
                    .isEqualTo(flat(BidsService.list(
                            tree, TODAY, new BidsService.Wanted(Optional.empty(), List.of("sump")), false)))
                    .hasSizeBetween(1, 9);
        }
    }

    /** The rows in the spelling of the command. */
    private static List<String> bids(LibraryRobot hand) {
        return hand.cells("library.bids").stream()
                .map(row -> String.join(
                                " ",
                                row.get(0),
                                row.get(1),
                                row.get(2),
                                row.get(3).isEmpty()
                                        ? ""
                                        : row.get(3).startsWith("over since ")
                                                ? row.get(3).replace("over since", "expired")
                                                : "until " + row.get(3),
                                row.get(4) + " days",
                                row.get(5),
                                row.get(6),
                                row.get(7),
                                row.get(8))
                        .replaceAll(" +", " "))
                .toList();
    }

    @Test
    void usesOfAnItemAreThoseOfTheCommandAndOpenTheirBid() throws IOException {
        try (OnScreen screen = new OnScreen()) {
            LibraryRobot hand = open(screen, LibraryTab.BOOK);
            hand.type("library.find", "DIG-MACH");
            JTabbedPane about = hand.find(JTabbedPane.class, "library.about");
            GuiActionRunner.execute(() -> about.setSelectedIndex(USED));
            screen.settle();
            List<String> uses = hand.cells("library.uses").stream()
                    .map(row -> String.join(" ", row).replaceAll(" +", " "))
                    .toList();
            assertThat(uses)
                    .isEqualTo(flat(BidsService.history("DIG-MACH", tree, false)))
                    .hasSizeGreaterThan(9);
            screen.picture("light-library-uses");
            int before = windows().size();
            hand.click("library.uses", 0, hand.cells("library.uses").get(3).get(0));
            hand.press("library.uses.open");
            screen.waitFor(() -> windows().size() == before + 1);
        }
    }

    @Test
    void bidOpensByEnterAndWhatIsNotSavedStaysWhereItIs() throws IOException {
        try (OnScreen screen = new OnScreen()) {
            LibraryRobot hand = open(screen, LibraryTab.BIDS);
            JobWindow first = windows().get(0);
            GuiActionRunner.execute(
                    () -> first.session().edit(first.session().draft().typed("/title", "Not saved yet")));
            hand.click("library.bids", 8, hand.cells("library.bids").get(1).get(0));
            hand.key(KeyEvent.VK_ENTER);
            screen.waitFor(() -> windows().size() == 2);
            assertThat(screen.ask(() -> first.session().draft().shown("/title")))
                    .isEqualTo("Not saved yet");
            assertThat(Files.readString(job)).doesNotContain("Not saved yet");
            GuiActionRunner.execute(() -> first.library(LibraryTab.BIDS));
            screen.settle();
            hand.click("library.bids", 8, hand.cells("library.bids").get(1).get(0));
            hand.key(KeyEvent.VK_ENTER);
            assertThat(windows())
                    .as("the bid that is open already comes forward")
                    .hasSize(2);
        }
    }

    @Test
    void bidIsCopiedWithWhatWasChosen() throws IOException {
        try (OnScreen screen = new OnScreen()) {
            LibraryRobot hand = open(screen, LibraryTab.BIDS);
            hand.type("copy.number", "2026-077");
            hand.type("copy.customer", "Juniper Ostrand");
            hand.press("copy.take.TERMS");
            hand.press("copy.make");
            Path copy = tree.resolve("2026-077/job.json");
            assertThat(copy).exists();
            assertThat(Files.readString(copy))
                    .contains("Juniper Ostrand", "\"walls\"", "2026-08-10")
                    .doesNotContain("\"condition\"", "\"payments\"", "Ida Wrenfield");
            assertThat(hand.lines("copy.text").get(0)).isEqualTo(copy.toString());
            hand.press("copy.make");
            assertThat(hand.text("copy.text")).contains("is there already; nothing was written");
            hand.type("copy.number", "2026-077");
        }
    }

    @Test
    void bidIsPricedAnewLineByLineBeforeItIsSaved() throws IOException {
        try (OnScreen screen = new OnScreen()) {
            BookService.at(tree.resolve("price-book.json"))
                    .change("STONE-MACH", Map.of("material/cost", "$43.00"), LocalDate.of(2026, 8, 1), "August list");
            String before = Files.readString(job);
            LibraryRobot hand = open(screen, LibraryTab.BIDS);
            hand.click("library.bids", 8, hand.cells("library.bids").get(0).get(0));
            JTabbedPane below = hand.find(JTabbedPane.class, "bids.below");
            GuiActionRunner.execute(() -> below.setSelectedIndex(REPRICE));
            hand.press("reprice.look");
            List<List<String>> rows = hand.cells("reprice.moves");
            assertThat(rows)
                    .anyMatch(row ->
                            row.get(0).equals("STONE-MACH") && row.get(5).equals("material: 2026-08-01 August list"));
            assertThat(rows.get(rows.size() - 1).get(1)).isEqualTo("Total");
            assertThat(Files.readString(job)).as("nothing is saved by looking").isEqualTo(before);
            screen.picture("light-library-reprice");
            hand.type("reprice.start", "2026-09-28");
            hand.type("reprice.finish", "2026-10-16");
            hand.press("reprice.save");
            assertThat(hand.text("reprice.text")).isEqualTo("Saved with the date 2026-08-10.");
            assertThat(Files.readString(job))
                    .contains("2026-08-10", "2026-09-28")
                    .isNotEqualTo(before);
        }
    }
}
