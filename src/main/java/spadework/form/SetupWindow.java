// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.BorderLayout;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.draft.Pointer;
import spadework.finding.Fault;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.FailureMessages;
import spadework.form.kit.FaultWords;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.NoticeBar;
import spadework.form.kit.PlainText;
import spadework.form.kit.Platform;
import spadework.form.kit.TextChanges;
import spadework.office.files.JobsFolder;

/** The first page: who the firm is, what an hour costs it, and where jobs live; or straight to the sample. */
public final class SetupWindow extends JFrame {
    private final Platform platform;
    private final Forms.Settings settings;
    private final BackgroundTasks files;
    private final Runnable ready;
    private final NoticeBar notice = new NoticeBar();
    private final Map<String, JTextField> fields = new LinkedHashMap<>();
    private final Map<String, LabeledControl> looks = new LinkedHashMap<>();
    private final JLabel where = PlainText.of(new JLabel());
    private final Draft start;
    private Path jobs;
    private boolean tried;
    private boolean begun;

    /**
     * Makes the page.
     *
     * @param files writes the folder of the jobs
     * @param ready called when that folder holds all that a job needs
     * @param sample opens the sample
     */
    SetupWindow(Platform platform, Forms.Settings settings, BackgroundTasks files, Runnable ready, Runnable sample) {
        super(Messages.of("first.title"));
        this.platform = platform;
        this.settings = settings;
        this.files = files;
        this.ready = ready;
        this.jobs = settings.jobs().orElse(JobsFolder.usual());
        this.start = start();
        JPanel page = new JPanel(
                new MigLayout("insets 24 40 24 40, gap 12 8, fillx, wrap 12, hidemode 3", "[grow,fill,sg]".repeat(12)));
        JLabel heading = new JLabel(Messages.of("first.heading"));
        heading.putClientProperty("FlatLaf.styleClass", "h1");
        page.add(heading, "span 8");
        JButton show = button("first.sample", () -> {
            sample.run();
            dispose();
        });
        page.add(show, "span 4");
        page.add(described("first.text"), "span 12, wmin 100");
        group(page, "first.group.firm");
        field(page, "name", "/name", 6);
        field(page, "phone", "/phone", 3);
        field(page, "email", "/email", 3);
        field(page, "street", "/address/street", 5);
        field(page, "city", "/address/city", 3);
        field(page, "state", "/address/state", 2);
        field(page, "zip", "/address/zip", 2);
        group(page, "first.group.papers");
        field(page, "licenseLabel", "/license/label", 4);
        field(page, "licenseNumber", "/license/number", 2);
        field(page, "carrier", "/insurance/carrier", 3);
        field(page, "policy", "/insurance/policy", 3);
        field(page, "limits", "/insurance/limits", 9);
        field(page, "until", "/insurance/until", 3);
        group(page, "first.group.money");
        page.add(described("first.figures"), "span 12, wmin 100");
        for (String trade : List.of("operator", "mason", "pipelayer", "laborer", "driver")) {
            field(page, "wage." + trade, "/wages/" + trade + "/hourly", trade.equals("operator") ? 4 : 2);
        }
        field(page, "overhead", "/priceRules/overhead", 4);
        field(page, "profit", "/priceRules/profit", 4);
        group(page, "first.where");
        where.setName("jobs folder");
        page.add(where, "span 6, wmin 100");
        page.add(button("first.choose", this::choose), "span 3");
        page.add(button("first.begin", this::begin), "span 3");
        JScrollPane scroll = new JScrollPane(page);
        scroll.setBorder(null);
        scroll.getVerticalScrollBar().setUnitIncrement(24);
        add(notice, BorderLayout.NORTH);
        add(scroll);
        setSize(1200, 740);
        setDefaultCloseOperation(DISPOSE_ON_CLOSE);
        showWhere();
    }

    private static Draft start() {
        try {
            return Draft.read(JobsFolder.startOfCompany()).orElseThrow();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    public NoticeBar notice() {
        return notice;
    }

    private static void group(JPanel page, String key) {
        JLabel label = new JLabel(Messages.of(key));
        label.putClientProperty("FlatLaf.styleClass", "h4");
        page.add(label, "newline, span 12, gaptop 8");
    }

    private static JTextArea described(String key) {
        JTextArea message = LabeledControl.wrapped();
        message.setText(Messages.of(key));
        message.setForeground(new JLabel().getForeground());
        message.getAccessibleContext().setAccessibleName(Messages.of(key));
        return message;
    }

    private JButton button(String key, Runnable act) {
        JButton button = new JButton(KeyBindings.action(Messages.of(key), act));
        button.setName(key);
        button.getAccessibleContext().setAccessibleName(Messages.of(key));
        return button;
    }

    private void field(JPanel page, String key, String pointer, int wide) {
        JTextField field = new JTextField(start.shown(pointer));
        field.setName(pointer);
        LabeledControl look = new LabeledControl(Messages.of("first." + key), true, field, field, "");
        TextChanges.in(field, () -> {
            if (tried) {
                tell();
            }
        });
        fields.put(pointer, field);
        looks.put(pointer, look);
        page.add(look.panel(), "span " + wide + ", top, wmin 40");
    }

    private Draft company() {
        Draft company = start;
        for (Map.Entry<String, JTextField> field : fields.entrySet()) {
            company = company.with(
                    field.getKey(),
                    new DraftValue.Text(field.getValue().getText().strip()));
        }
        return company;
    }

    /** Marks what is wrong, as the command line would tell it; whether nothing is. */
    private boolean tell() {
        List<Fault> faults = JobsFolder.faultsOfCompany(company().text());
        looks.forEach((pointer, look) -> look.tell(faults.stream()
                .filter(fault -> Pointer.isIn(fault.place().pointer(), pointer))
                .toList()));
        List<Fault> elsewhere = new ArrayList<>(faults);
        elsewhere.removeIf(fault -> fields.keySet().stream()
                .anyMatch(at -> Pointer.isIn(fault.place().pointer(), at)));
        if (!elsewhere.isEmpty()) {
            notice.say(FaultWords.of(elsewhere));
        }
        return faults.isEmpty();
    }

    private void choose() {
        Optional<Path> chosen = platform.folder(this, jobs);
        chosen.ifPresent(folder -> jobs = folder);
        showWhere();
    }

    private void showWhere() {
        where.setText(jobs.toString());
        where.getAccessibleContext().setAccessibleName(Messages.of("first.where") + ": " + jobs);
    }

    private void begin() {
        tried = true;
        if (begun || !tell()) {
            return;
        }
        begun = true;
        Path folder = jobs;
        String company = company().text();
        files.run(
                () -> {
                    JobsFolder.open(folder, company);
                    return folder;
                },
                made -> {
                    settings.keep(made);
                    ready.run();
                    dispose();
                },
                unwritable -> {
                    begun = false;
                    notice.say(FailureMessages.of(unwritable));
                });
    }
}
