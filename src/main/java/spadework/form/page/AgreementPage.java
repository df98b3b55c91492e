// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import spadework.form.field.BasePointer;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.Platform;
import spadework.form.kit.WordChoice;
import spadework.form.session.JobFiles;
import spadework.form.session.JobSession;
import spadework.form.session.StepRunner;
import spadework.office.Office;
import spadework.office.aftercare.WarrantyService;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Canceling;
import spadework.office.agreement.Closing;
import spadework.office.agreement.Deciding;
import spadework.office.agreement.Issuing;
import spadework.office.agreement.Progress;
import spadework.office.agreement.Progress.Step;
import spadework.office.agreement.SignatureInput;
import spadework.office.reply.Reply;
import spadework.reason.Reason;

/** Where the job stands between proposal and warranty, and the steps that lead on; each is taken by the office. */
public final class AgreementPage extends FormPage {
    private final StepRunner stepRunner;
    private final Platform platform;
    private final LocalDate today;
    private final BackgroundTasks looking;
    private final JTextArea standing = described("standing");
    private final Map<Step, JTextArea> waits = new EnumMap<>(Step.class);
    private final Map<Step, JTextArea> outcomes = new EnumMap<>(Step.class);
    private final Map<Step, List<JButton>> buttons = new EnumMap<>(Step.class);
    private final OptionCheckBoxes offers = new OptionCheckBoxes();
    private final JComboBox<WordChoice> orders = new JComboBox<>();
    private final JTextArea order = described("order");
    private final JTextArea open = described("open");
    private final JTextArea after = described("after");
    private final SignatureFields accepting = new SignatureFields("accept");
    private final SignatureFields deciding = new SignatureFields("change");
    private final SignatureFields canceling = new SignatureFields("cancel");
    private final SignatureFields closing = new SignatureFields("close");
    private final JButton show;
    private final JButton card;
    private Optional<Progress> progress = Optional.empty();
    private boolean busy;

    /**
     * What the page works with.
     *
     * @param files brings signed papers to the job
     */
    public record Services(StepRunner steps, Platform platform, JobFiles files) {}

    public AgreementPage(JobSession session, Services services, LocalDate today) {
        super(session, "agreement");
        this.stepRunner = services.steps();
        this.platform = services.platform();
        this.today = today;
        looking = new BackgroundTasks(
                "progress", session.work(), broken -> standing.setText(Messages.of("step.broken", Reason.of(broken))));
        group("standing");
        put(standing, "span 12, w 100:100:");
        step(Step.ISSUE);
        act(Step.ISSUE, "issue", this::issue);
        AgreedWorkPages.signing(this);
        step(Step.ACCEPT);
        put(offers, "span 12, w 100:100:");
        accepting.onto(this, services.files());
        act(Step.ACCEPT, "accept", this::accept);
        accepted(this);
        step(Step.CANCEL);
        canceling.field(this, "received", 3);
        canceling.field(this, "sent", 3);
        canceling.field(this, "giver", 4);
        canceling.field(this, "notice", 4);
        canceling.field(this, "released", 6);
        act(Step.CANCEL, "cancel", this::cancel);
        step(Step.CHANGE);
        orders.setName("orders");
        orders.getAccessibleContext().setAccessibleName(Messages.of("orders"));
        PlainText.inList(orders);
        orders.addActionListener(event -> showOrder());
        put(orders, "span 12, w 100:100:");
        put(order, "span 12, w 100:100:");
        deciding.onto(this, services.files());
        act(Step.CHANGE, "decide", () -> decide(true));
        act(Step.CHANGE, "decline", () -> decide(false));
        step(Step.CLOSE);
        put(open, "span 12, w 100:100:");
        closing.field(this, "on", 3);
        closing.field(this, "completed", 3);
        closing.field(this, "waived", 6);
        act(Step.CLOSE, "close", this::close);
        closed(this);
        group("after");
        show = button("warranty", this::showWarranty);
        card = button("card", this::printCard);
        put(show, "span 4");
        put(card, "span 4");
        put(after, "newline, span 12, w 100:100:");
    }

    private static JTextArea described(String name) {
        return LabeledControl.readable(name, Messages.of("readable." + name));
    }

    private void step(Step step) {
        String name = step.name().toLowerCase(Locale.ROOT);
        if (step == Step.CANCEL) {
            rareGroup("step." + name);
        } else {
            group("step." + name);
        }
        JTextArea waiting = described("waits " + name);
        waits.put(step, waiting);
        outcomes.put(step, described("outcome " + name));
        put(waiting, "span 12, w 100:100:");
    }

    private void act(Step step, String key, Runnable act) {
        JButton button = button(key, act);
        put(button, buttons.containsKey(step) ? "span 6" : "newline, span 6");
        buttons.merge(step, List.of(button), (one, two) -> List.of(one.get(0), two.get(0)));
        put(outcomes.get(step), "newline, span 12, w 100:100:");
    }

    private JButton button(String key, Runnable act) {
        JButton button = new JButton(KeyBindings.action(Messages.of("step." + key), act));
        button.setName("step " + key);
        button.getAccessibleContext().setAccessibleName(Messages.of("step." + key));
        return button;
    }

    /** All that it holds of the job. */
    static void places(PageContent page) {
        AgreedWorkPages.signing(page);
        accepted(page);
        closed(page);
    }

    private static void accepted(PageContent page) {
        BasePointer accepted = BasePointer.JOB.inside("/accepted");
        written(page, accepted, 2, "/revision", "/on", "/price", "/bookDate", "/options", "/declined");
        written(page, accepted, 3, "/by", "/signature/by", "/signature/file", "/signature/typed", "/signature/consent");
        for (String part : AgreedWorkPages.CONSENT) {
            page.shown(accepted, "/signature/electronic" + part, 2);
        }
        AgreedWorkPages.furtherSignatures(page, accepted);
        page.shown(accepted, "/templates", 3);
    }

    private static void closed(PageContent page) {
        BasePointer closed = BasePointer.JOB.inside("/closed");
        written(page, closed, 3, "/completed", "/certificate");
        page.shown(closed, "/balanceWaived", 6);
    }

    private static void written(PageContent page, BasePointer base, int wide, String... keys) {
        for (String key : keys) {
            page.shown(base, key, wide);
        }
    }

    private void issue() {
        take(Step.ISSUE, job -> new Issuing(session().office(), today).issue(job), () -> {});
    }

    private void accept() {
        if (accepting.areDays("on", "given?", "disclosed?")) {
            List<String> taken = offers.taken();
            SignatureInput yes = accepting.yes();
            take(
                    Step.ACCEPT,
                    job -> new Accepting(session().office(), today).accept(job, taken, yes),
                    accepting::clear);
        }
    }

    private void cancel() {
        if (canceling.areDays("received", "sent?")) {
            Canceling.NoticeInput notice = canceling.notice();
            take(Step.CANCEL, job -> new Canceling(session().office(), today).cancel(job, notice), canceling::clear);
        }
    }

    private void decide(boolean accepted) {
        Optional<Progress.Order> chosen = chosen();
        if (chosen.isPresent() && deciding.areDays("on", "given?", "disclosed?")) {
            int number = chosen.get().number();
            SignatureInput yes = deciding.yes();
            take(
                    Step.CHANGE,
                    job -> new Deciding(session().office(), today).decide(job, number, accepted, yes),
                    deciding::clear);
        }
    }

    private void close() {
        if (closing.areDays("on", "completed?")) {
            Optional<LocalDate> completed = closing.said("completed").map(LocalDate::parse);
            Optional<String> waived = closing.said("waived");
            LocalDate on = closing.day("on");
            take(
                    Step.CLOSE,
                    job -> new Closing(session().office(), today).close(job, new Closing.Asked(on, completed, waived)),
                    closing::clear);
        }
    }

    private void take(Step step, StepRunner.JobStep taken, Runnable written) {
        JTextArea message = outcomes.get(step);
        String underWay = Messages.of("step.underway");
        stepRunner.take(
                taken,
                () -> {
                    busy = true;
                    outcomes.values().forEach(area -> tell(area, "", false));
                    tell(message, underWay, false);
                    allow();
                },
                outcome -> {
                    tell(message, OutcomeMessages.of(outcome), !OutcomeMessages.isDone(outcome));
                    if (OutcomeMessages.isDone(outcome)) {
                        written.run();
                    }
                },
                () -> {
                    busy = false;
                    if (message.getText().equals(underWay)) {
                        tell(message, "", false);
                    }
                    look();
                });
    }

    private void showWarranty() {
        Path job = session().file().path();
        stepRunner.work(() -> WarrantyService.show(job, today, false), this::answer);
    }

    private void printCard() {
        Path job = session().file().path();
        Path near = job.toAbsolutePath().getParent();
        platform.folder(this, near)
                .ifPresent(out -> stepRunner.work(
                        () -> WarrantyService.printCards(
                                job, out, today, session().office()),
                        this::answer));
    }

    private void answer(Reply reply) {
        tell(after, String.join("\n", reply.out()) + String.join("\n", reply.err()), !reply.done());
    }

    private static void tell(JTextArea area, String words, boolean wrong) {
        area.setForeground(UIManager.getColor(wrong ? "Spadework.fault" : "Label.foreground"));
        area.setText(words);
        area.setVisible(!words.isEmpty());
    }

    public void stop() {
        looking.stop();
    }

    @Override
    public void showFaults() {
        super.showFaults();
        look();
    }

    private void look() {
        Office office = session().office();
        Path job = session().file().path();
        session()
                .bid()
                .ifPresentOrElse(
                        bid -> looking.latest("progress", () -> Progress.of(office, bid, job), this::show),
                        () -> tell(
                                standing,
                                Messages.of("papers.faults", session().faults().size()),
                                false));
        allow();
    }

    private void show(Progress read) {
        progress = Optional.of(read);
        tell(standing, ProgressMessages.of(read), false);
        offers.show(read.options(), read.contract().isPresent() || read.isBeingSigned());
        showOrders(read.changes());
        boolean closable = read.waits(Step.CLOSE).isEmpty();
        tell(
                open,
                !closable
                        ? ""
                        : read.open().isEmpty()
                                ? Messages.of("open.nothing")
                                : Messages.of("open.said") + "\n" + String.join("\n", read.open()),
                closable && !read.open().isEmpty());
        allow();
    }

    private void showOrders(List<Progress.Order> now) {
        String chosen = orders.getSelectedItem() instanceof WordChoice choice ? choice.word() : "";
        List<WordChoice> choices = now.stream().map(AgreementPage::choice).toList();
        boolean same = choices.size() == orders.getItemCount();
        for (int i = 0; same && i < choices.size(); i++) {
            same = choices.get(i).equals(orders.getItemAt(i));
        }
        if (!same) {
            orders.removeAllItems();
            choices.forEach(orders::addItem);
            now.stream()
                    .filter(Progress.Order::open)
                    .findFirst()
                    .map(AgreementPage::choice)
                    .ifPresent(orders::setSelectedItem);
            choices.stream()
                    .filter(choice -> choice.word().equals(chosen))
                    .findFirst()
                    .ifPresent(orders::setSelectedItem);
        }
        orders.setVisible(!now.isEmpty());
        showOrder();
    }

    private static WordChoice choice(Progress.Order order) {
        return new WordChoice(
                Integer.toString(order.number()), Messages.of("order.name", order.number(), order.title()));
    }

    private Optional<Progress.Order> chosen() {
        String number = orders.getSelectedItem() instanceof WordChoice choice ? choice.word() : "";
        return progress.stream()
                .flatMap(read -> read.changes().stream())
                .filter(one -> Integer.toString(one.number()).equals(number))
                .findFirst();
    }

    private void showOrder() {
        tell(order, chosen().map(ProgressMessages::of).orElse(""), false);
        allow();
    }

    /** What is due can be pressed; the rest says why not. */
    private void allow() {
        boolean faulty = !session().faults().isEmpty();
        for (Step step : buttons.keySet()) {
            Optional<String> wait = faulty
                    ? Optional.of(
                            Messages.of("papers.faults", session().faults().size()))
                    : progress.flatMap(read -> read.waits(step)).map(why -> Messages.of("wait." + why));
            boolean decided =
                    step == Step.CHANGE && chosen().filter(Progress.Order::open).isEmpty();
            boolean due = !busy && progress.isPresent() && wait.isEmpty() && !decided;
            tell(waits.get(step), wait.orElse(""), false);
            buttons.get(step).forEach(button -> button.setEnabled(due));
        }
        accepting.enable(buttons.get(Step.ACCEPT).get(0).isEnabled());
        canceling.enable(buttons.get(Step.CANCEL).get(0).isEnabled());
        deciding.enable(buttons.get(Step.CHANGE).get(0).isEnabled());
        closing.enable(buttons.get(Step.CLOSE).get(0).isEnabled());
        boolean warranted =
                progress.filter(read -> read.certificate().isPresent()).isPresent() && !busy;
        show.setEnabled(warranted);
        card.setEnabled(warranted);
    }
}
