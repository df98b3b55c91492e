// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTable;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.form.library.LibraryTab;
import spadework.form.page.JobPage;
import spadework.money.Dollars;
import spadework.office.files.JobsFolder;

/** After an accepted change order every place of the windows says the same price of the job. */
@WindowTest
class AfterChangeOrderTest {
    @TempDir
    Path folder;

    private static String text(OnScreen screen, String name) {
        return screen.ask(() -> screen.all(JLabel.class, one -> name.equals(one.getName()))
                .get(0)
                .getText());
    }

    /** What stands under the price, part by part. */
    private static Optional<Dollars> sumOfParts(OnScreen screen) {
        GuiActionRunner.execute(() -> screen.job().go(JobPage.PRICE));
        screen.settle();
        screen.picture("price-after-change-order");
        JTable parts = screen.all(JTable.class, one -> "price.sections".equals(one.getName()))
                .get(0);
        return screen.ask(() -> IntStream.range(0, parts.getRowCount())
                .mapToObj(row -> parts.getValueAt(row, 1).toString())
                .map(text -> Dollars.of(text.replace("−", "-").replaceAll("[$,]", "")))
                .reduce(Dollars::plus));
    }

    @Test
    void priceWhatIfBidsAndFirstPageAgree() throws IOException {
        Path job = SampleCopies.of("added-wall-then-closed", folder);
        Path jobs = job.getParent().getParent();
        JobsFolder.open(jobs, Files.readString(Path.of("sample-quotes", "company.json")));
        String price;
        try (OnScreen screen = OnScreen.job(job)) {
            price = screen.ask(() -> screen.all(JButton.class, one -> "total".equals(one.getName()))
                    .get(0)
                    .getText());
            assertThat(screen.session().draft().shown("/changes/0/state")).isEqualTo("accepted");
            GuiActionRunner.execute(() -> screen.job().show(SidePane.WHATIF));
            screen.settle();
            screen.picture("what-if-after-change-order");
            assertThat(text(screen, "whatif price")).as("what if").isEqualTo(price);
            assertThat(sumOfParts(screen))
                    .as("parts of the price")
                    .isEqualTo(screen.session().total());
            GuiActionRunner.execute(() -> screen.job().toggleMargin());
            String margin = text(screen, "margin").replace("margin ", "");
            LibraryRobot library = LibraryRobot.open(screen, LibraryTab.BIDS);
            assertThat(library.cells("library.bids"))
                    .as("bids")
                    .anySatisfy(row -> assertThat(row).contains(price, margin));
        }
        try (OnScreen screen = new OnScreen()) {
            screen.remembered().keep(jobs);
            screen.open(() -> screen.forms().home());
            screen.settle();
            JTable rows = screen.all(JTable.class, one -> "home.jobs".equals(one.getName()))
                    .get(0);
            assertThat(screen.ask(() -> rows.getValueAt(0, 4).toString()))
                    .as("first page")
                    .isEqualTo(price);
            JFrame home = (JFrame) screen.window().target();
            GuiActionRunner.execute(home::dispose);
        }
    }
}
