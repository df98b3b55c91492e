// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.FailureMessages;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.Theme;
import spadework.form.session.JobSession;
import spadework.office.Bid;
import spadework.office.portfolio.WhatIf;
import spadework.office.portfolio.WhatIfPicture;

/**
 * The price of the job with other depth, pace and profit, by sliders: the price it comes to, the range it may come to
 * as a curve, and the days as bars. Nothing of it is written into the job.
 */
public final class WhatIfPane extends JPanel {
    private final JobSession session;
    private final BackgroundTasks working;
    private final Map<Slide, JSlider> sliders = new EnumMap<>(Slide.class);
    private final Map<Slide, JLabel> values = new EnumMap<>(Slide.class);
    private final JLabel price = PlainText.of(new JLabel(" "));
    private final JLabel more = PlainText.of(new JLabel(" "));
    private final ScenePanel range = new ScenePanel("range");
    private final ScenePanel days = new ScenePanel("days");
    private Optional<Request> shown = Optional.empty();
    private boolean marginShown;
    private boolean setting;

    /** What a slider changes. */
    private enum Slide {
        DEPTH(-12, 24, 0),
        PRODUCTION(50, 150, 100),
        PROFIT(0, 60, 0);

        private final int least;
        private final int most;
        private final int usual;

        Slide(int least, int most, int usual) {
            this.least = least;
            this.most = most;
            this.usual = usual;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private record Request(Bid bid, String settings) {
        @SuppressWarnings("ReferenceEquality") // the very same record: nothing was figured since
        boolean isSame(Request other) {
            return bid == other.bid && settings.equals(other.settings);
        }
    }

    public WhatIfPane(JobSession session) {
        super(new MigLayout("insets 8 12 8 12, gap 6, fill, wrap 3, hidemode 3", "[][grow,fill][80:pref:,right]"));
        this.session = session;
        working = new BackgroundTasks("what-if", session.work(), why -> more.setText(FailureMessages.of(why)));
        for (Slide slide : Slide.values()) {
            add(slide);
        }
        price.setName("whatif price");
        more.setName("whatif more");
        add(price, "span 3, split 3");
        add(more, "growx, wmin 40");
        JButton back = new JButton(KeyBindings.action(Messages.of("slide.back"), this::back));
        back.setName("whatif back");
        back.getAccessibleContext().setAccessibleName(Messages.of("slide.back"));
        add(back, "wrap");
        add(new JLabel(range.title()), "span 3");
        add(range, "span 3, grow, pushy, hmin 60, wmin 80");
        add(new JLabel(days.title()), "span 3");
        add(days, "span 3, grow, pushy, hmin 60, wmin 80");
        showMargin(false);
    }

    private void add(Slide slide) {
        JSlider slider = new JSlider(slide.least, slide.most, slide.usual);
        slider.setName("slide " + slide.word());
        String name = Messages.of("slide." + slide.word());
        slider.getAccessibleContext().setAccessibleName(name);
        slider.addChangeListener(event -> {
            if (!setting) {
                showAnswer();
            }
        });
        JLabel label = new JLabel(name);
        label.setName("label " + slide.word());
        label.setLabelFor(slider);
        JLabel value = new JLabel(" ");
        value.setName("value " + slide.word());
        sliders.put(slide, slider);
        values.put(slide, value);
        add(label);
        add(slider, "wmin 60");
        add(value);
    }

    /** All as the job has it. */
    private void back() {
        setting = true;
        sliders.forEach((slide, slider) -> slider.setValue(usual(slide)));
        setting = false;
        showAnswer();
    }

    private int usual(Slide slide) {
        return slide == Slide.PROFIT ? session.bid().map(WhatIf::profit).orElse(slide.usual) : slide.usual;
    }

    /** Shows or hides what only the owner should see. */
    public void showMargin(boolean now) {
        if (now && !marginShown) {
            setting = true;
            sliders.get(Slide.PROFIT).setValue(usual(Slide.PROFIT));
            setting = false;
        }
        marginShown = now;
        for (java.awt.Component one : getComponents()) {
            if (one.getName() != null && one.getName().endsWith(" profit")) {
                one.setVisible(now);
            }
        }
        showAnswer();
    }

    public void showAnswer() {
        sliders.forEach((slide, slider) -> values.get(slide).setText(text(slide, slider.getValue())));
        price.setFont(Theme.bold(22));
        if (!isShowing()) {
            return;
        }
        Optional<Bid> bid = session.bid();
        if (bid.isEmpty()) {
            price.setText(Messages.of("totals.none"));
            more.setText(Messages.of("whatif.none"));
            range.clear();
            days.clear();
            return;
        }
        Request request = new Request(bid.get(), settings());
        if (shown.filter(request::isSame).isEmpty()) {
            shown = Optional.of(request);
            working.latest("whatif", () -> WhatIf.picture(request.bid(), request.settings()), this::show);
        }
    }

    private static String text(Slide slide, int value) {
        return slide == Slide.DEPTH
                ? Messages.of("slide.inches", (value > 0 ? "+" : "") + value)
                : Messages.of("slide.percent", value);
    }

    /** What is otherwise, as the command line has it. */
    private String settings() {
        List<String> said = new ArrayList<>();
        for (Slide slide : Slide.values()) {
            int value = sliders.get(slide).getValue();
            boolean seen = slide != Slide.PROFIT || marginShown;
            if (seen && value != usual(slide)) {
                said.add(
                        slide == Slide.DEPTH
                                ? "depth=" + (value < 0 ? "-" : "+") + Math.abs(value) + " in"
                                : slide == Slide.PRODUCTION
                                        ? "production=" + value + "%"
                                        : session.bid().map(WhatIf::profitKey).orElse("margin") + "=" + value + "%");
            }
        }
        return said.stream().collect(Collectors.joining(","));
    }

    private void show(WhatIfPicture picture) {
        price.setText(picture.price());
        more.setText(Messages.of("slide.more", picture.more())
                + (marginShown && !picture.left().isEmpty() ? ", " + Messages.of("slide.left", picture.left()) : ""));
        range.show(picture.range());
        days.show(picture.days());
    }

    public void close() {
        working.stop();
    }
}
