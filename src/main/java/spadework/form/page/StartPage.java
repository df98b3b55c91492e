// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JTable;
import spadework.draft.UsualJob;
import spadework.form.field.BasePointer;
import spadework.form.field.RowsTable;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.TypedPrefix;
import spadework.form.kit.WordChoice;
import spadework.form.session.JobSession;

/** The tape sheet: what a visit brings home, in the order of the tape, and a price from the first wall on. */
public final class StartPage extends FormPage {
    private final JComboBox<WordChoice> usual = new JComboBox<>();
    private final AssumedPane assumed;
    private final RowsTable walls;
    private boolean showing;

    /** @param go leads to a place that this page does not have */
    public StartPage(JobSession session, Consumer<String> go) {
        super(session, "start");
        group("tape.kind");
        usual.setName("usual job");
        PlainText.inList(usual);
        TypedPrefix.in(usual);
        usual.addActionListener(event -> choose());
        put(
                new LabeledControl(Messages.of("usual.job"), false, usual, usual, Messages.of("usual.job.help"))
                        .panel(),
                "span 8, top, wmin 40");
        group("tape.walls");
        walls = table(
                BasePointer.JOB.inside("/walls"),
                "/length=3",
                "/depth/start=3",
                "/depth/end=3",
                "/where=5",
                "/faces=3",
                "/condition/cracks=3",
                "/condition/surface=3",
                "/condition/horizontalCrack=3",
                "/condition/displaced=3",
                "/condition/footingUndermined=4");
        group("tape.water");
        BasePointer main = firstRow("/water/mains");
        BasePointer drain = firstRow("/water/drains");
        BasePointer outlet = firstRow("/water/outlets");
        measure(drain, "/startInvert", 3);
        measure(drain, "/endInvert", 3);
        measure(main, "/length", 2);
        measure(main, "/trench/depth", 2);
        measure(main, "/endInvert", 2);
        measure(outlet, "/what", 6);
        measure(outlet, "/level", 3);
        measure(outlet, "/fromLotLine", 3);
        table(BasePointer.JOB.inside("/water/downspouts"), 6, "/roof=4", "/label=2", "/into=2");
        measure(firstRow("/water/roofLines"), "/length", 3);
        group("tape.ground");
        field("/site/soil/texture", 2);
        field("/site/soil/seepage", 2);
        field("/site/rain/intensity", 2);
        field("/site/rain/source", 6);
        group("tape.who");
        measure(BasePointer.JOB, "/customer/names/0", 3);
        field("/site/address/street", 3);
        field("/site/address/city", 2);
        field("/site/address/state", 2);
        field("/site/address/zip", 2);
        field("/site/house/eastWest", 2);
        field("/site/house/northSouth", 2);
        field("/schedule/earliestStart", 2);
        field("/schedule/latestFinish", 2);
        field("/schedule/workingDays", 2);
        group("assumed");
        assumed = new AssumedPane(session, place -> {
            if (holdsExactly(place)) {
                reveal(place);
            } else {
                go.accept(place);
            }
        });
        put(assumed, "span 12, wmin 100");
    }

    /** A field under the name that it has on a tape sheet. */
    private void measure(BasePointer base, String key, int wide) {
        field(
                base,
                key,
                wide,
                Messages.of("tape" + base.format(key).replace("/0", "").replace('/', '.')));
    }

    private BasePointer firstRow(String list) {
        return new BasePointer(
                list + "/0", () -> session().draft().rows(list) > 0 ? Optional.of(list + "/0") : Optional.empty());
    }

    private boolean holdsExactly(String place) {
        String format = place.replaceAll("/\\d+(?=/|$)", "/0");
        return entries().stream()
                        .anyMatch(entry -> format.equals(entry.control().getName()))
                || format.matches("/walls/0/(length|depth/.*|where|faces|condition/(?!bow).*)");
    }

    private void choose() {
        if (!showing && usual.getSelectedItem() instanceof WordChoice choice) {
            session().usual().all().stream()
                    .filter(one -> one.name().equals(choice.word()))
                    .findFirst()
                    .ifPresent(session()::startAs);
        }
    }

    /** Decides all that is assumed and the contractor's own to decide. */
    public void decide() {
        assumed.decide();
    }

    /** The keyboard goes to the first measure of the first wall. */
    @Override
    public void begin() {
        JTable table = walls.table();
        table.changeSelection(0, 0, false, false);
        table.requestFocusInWindow();
    }

    @Override
    public void showAll() {
        showUsual();
        super.showAll();
    }

    @Override
    public void showFaults() {
        super.showFaults();
        assumed.showAnswer();
    }

    private void showUsual() {
        List<String> names =
                session().usual().all().stream().map(UsualJob::name).toList();
        showing = true;
        if (usual.getItemCount() != names.size()) {
            usual.removeAllItems();
            names.forEach(name -> usual.addItem(new WordChoice(name, name)));
        }
        session()
                .usual()
                .of(session().draft())
                .ifPresent(one -> usual.setSelectedItem(new WordChoice(one.name(), one.name())));
        usual.setEnabled(session().draft().at("/accepted").isEmpty());
        showing = false;
    }
}
