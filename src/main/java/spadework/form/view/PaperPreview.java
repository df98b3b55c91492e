// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.WordChoice;
import spadework.form.session.JobSession;
import spadework.form.session.PaperNames;
import spadework.office.Bid;
import spadework.office.JobPaper;
import spadework.office.PaperKind;
import spadework.press.page.PageView;
import spadework.reason.Reason;

/**
 * The chosen paper as it will be printed, made in the background from the very file that is saved and sent. Only the
 * latest wish is shown.
 */
public final class PaperPreview extends JPanel {
    /** Width of a letter page. */
    private static final double POINTS = 612;

    /** Room for the scroll bar beside the page. */
    private static final int MARGIN = 20;

    private static final double STEP = 1.25;
    private static final double LEAST = 0.4;
    private static final double MOST = 4;

    private final JobSession session;
    private final BackgroundTasks looking;
    private final List<JobPaper> papers = new ArrayList<>();
    private final JComboBox<WordChoice> box = new JComboBox<>();
    private final JLabel number = new JLabel();
    private final JLabel state = PlainText.of(new JLabel());
    private final Picture picture = new Picture();
    private final JScrollPane scroll = new JScrollPane(picture);
    private Optional<BufferedImage> image = Optional.empty();
    private Optional<Request> shown = Optional.empty();
    private boolean offering;
    private int page;
    private int pages = 1;
    private double zoom = 1;
    /** Only for the looking thread. */
    private Optional<Open> open = Optional.empty();

    private record Request(Bid bid, JobPaper paper, Path file, int page, double scale) {
        @SuppressWarnings("ReferenceEquality") // the very same record: nothing was figured since
        boolean isSame(Request other) {
            return bid == other.bid && paper.equals(other.paper) && page == other.page && scale == other.scale;
        }
    }

    private record Rendered(BufferedImage image, int pages) {}

    private record Open(Bid bid, JobPaper paper, PageView view) {}

    public PaperPreview(JobSession session) {
        super(new BorderLayout());
        this.session = session;
        this.looking = new BackgroundTasks("preview", session.work(), this::failed);
        PaperKind.ofEveryJob().stream().map(JobPaper::of).forEach(papers::add);
        papers.forEach(paper -> box.addItem(choice(paper)));
        box.setName("paper");
        box.getAccessibleContext().setAccessibleName(Messages.of("page.paper"));
        box.addActionListener(event -> {
            if (!offering) {
                turn(0);
            }
        });
        picture.setName("page picture");
        JPanel bar = new JPanel(new MigLayout("insets 6, gap 4, fillx, hidemode 3", "[grow,fill][][][][][][]"));
        bar.add(box, "growx");
        bar.add(button("back", () -> turn(page - 1)));
        bar.add(number);
        bar.add(button("on", () -> turn(page + 1)));
        bar.add(button("smaller", () -> zoom(zoom / STEP)));
        bar.add(button("larger", () -> zoom(zoom * STEP)));
        bar.add(button("fit", () -> zoom(1)), "wrap");
        bar.add(state, "span, growx, wmin 40");
        state.setName("page state");
        scroll.setName("page scroll");
        scroll.getVerticalScrollBar().setUnitIncrement(24);
        add(bar, BorderLayout.NORTH);
        add(scroll);
        scroll.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                showAnswer();
            }
        });
    }

    private JButton button(String key, Runnable act) {
        JButton button = new JButton(KeyBindings.action(Messages.of("page." + key), act));
        button.setName("page " + key);
        button.putClientProperty("JButton.buttonType", "borderless");
        button.getAccessibleContext().setAccessibleName(Messages.of("page." + key + ".name"));
        button.setToolTipText(Messages.of("page." + key + ".name"));
        return button;
    }

    /** The paper that is looked at. */
    JobPaper paper() {
        return papers.get(Math.max(0, box.getSelectedIndex()));
    }

    public void choose(JobPaper paper) {
        box.setSelectedIndex(papers.indexOf(paper));
    }

    /** Offers the papers that the job has now; the one that is looked at stays, if it is among them. */
    private void offer(List<JobPaper> now) {
        if (!now.equals(papers)) {
            JobPaper chosen = paper();
            offering = true;
            papers.clear();
            papers.addAll(now);
            box.removeAllItems();
            papers.forEach(paper -> box.addItem(choice(paper)));
            box.setSelectedIndex(Math.max(0, papers.indexOf(chosen)));
            offering = false;
        }
    }

    private static WordChoice choice(JobPaper paper) {
        return new WordChoice(paper.file(), PaperNames.of(paper));
    }

    private void turn(int to) {
        page = Math.max(0, Math.min(to, pages - 1));
        showAnswer();
    }

    private void zoom(double to) {
        zoom = Math.max(LEAST, Math.min(MOST, to));
        showAnswer();
    }

    /** The picture on show, for whoever wants to look at it. */
    public Optional<BufferedImage> image() {
        return image;
    }

    public int pages() {
        return pages;
    }

    public void showAnswer() {
        tell();
        Optional<Bid> bid = session.bid();
        bid.map(JobPaper::of).ifPresent(this::offer);
        if (!isShowing() || bid.isEmpty()) {
            return;
        }
        double screen = getGraphicsConfiguration().getDefaultTransform().getScaleX();
        double width = Math.max(100, scroll.getWidth() - MARGIN);
        Request request = new Request(bid.get(), paper(), session.file().path(), page, width / POINTS * zoom * screen);
        if (shown.filter(request::isSame).isEmpty()) {
            shown = Optional.of(request);
            looking.latest("page", () -> look(request), this::seen);
        }
    }

    @SuppressWarnings("ReferenceEquality") // the very same record: nothing was figured since
    private Rendered look(Request request) throws IOException {
        if (open.isEmpty()
                || open.get().bid() != request.bid()
                || !open.get().paper().equals(request.paper())) {
            PageView view = PageView.of(session.office().handedOut(request.bid(), request.paper(), request.file()));
            open.ifPresent(old -> old.view().close());
            open = Optional.of(new Open(request.bid(), request.paper(), view));
        }
        PageView view = open.get().view();
        int last = view.pages() - 1;
        return new Rendered(view.picture(Math.min(request.page(), last), request.scale()), view.pages());
    }

    private void seen(Rendered preview) {
        image = Optional.of(preview.image());
        pages = preview.pages();
        page = Math.min(page, pages - 1);
        picture.revalidate();
        picture.repaint();
        tell();
    }

    private void failed(Exception thrown) {
        state.setText(Reason.of(thrown));
        state.setVisible(true);
    }

    private void tell() {
        number.setText(Messages.of("page.number", page + 1, pages));
        int stops = session.bid().map(bid -> bid.openStops().size()).orElse(0);
        String text = session.bid().isEmpty()
                ? Messages.of("page.none")
                : !session.isCurrent() && !session.faults().isEmpty()
                        ? session.assumed()
                                .map(assumed -> Messages.of(
                                        "page.provisional", assumed.all().size()))
                                .orElseGet(() -> Messages.of(
                                        "page.older", session.faults().size()))
                        : stops > 0
                                ? Messages.of("page.stops", stops)
                                : !paper().paper().isForHomeowner() ? Messages.of("page.own") : "";
        state.setText(text);
        state.setVisible(!text.isEmpty());
        picture.getAccessibleContext()
                .setAccessibleName(Messages.of("page.picture", PaperNames.of(paper()), page + 1, pages));
    }

    public void close() {
        looking.stop();
    }

    /** The page, at one pixel of the picture to one of the screen. */
    private final class Picture extends JComponent {
        @Override
        public Dimension getPreferredSize() {
            double screen = getGraphicsConfiguration() == null
                    ? 1
                    : getGraphicsConfiguration().getDefaultTransform().getScaleX();
            return image.map(i -> new Dimension((int) (i.getWidth() / screen), (int) (i.getHeight() / screen)))
                    .orElse(new Dimension(100, 100));
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            image.ifPresent(i -> {
                Graphics2D pen = (Graphics2D) graphics.create();
                pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
                Dimension size = getPreferredSize();
                pen.drawImage(i, Math.max(0, (getWidth() - size.width) / 2), 0, size.width, size.height, null);
                pen.dispose();
            });
        }

        @Override
        public AccessibleContext getAccessibleContext() {
            if (accessibleContext == null) {
                accessibleContext = new AccessibleJComponent() {
                    @Override
                    public AccessibleRole getAccessibleRole() {
                        return AccessibleRole.ICON;
                    }
                };
            }
            return accessibleContext;
        }
    }
}
