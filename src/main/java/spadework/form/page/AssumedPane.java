// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.awt.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.draft.Assumption;
import spadework.draft.Assumption.Kind;
import spadework.draft.Assumptions;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.ReadOnlyTable;
import spadework.form.session.JobSession;
import spadework.form.session.PointerNames;

/** What the price still rests on that nobody has written: each is confirmed, changed, or decided with the others. */
final class AssumedPane extends JPanel {
    private static final int HIGH = 170;

    private final JobSession session;
    private final Consumer<String> go;
    private final JTextArea said = LabeledControl.readable("assumed said", Messages.of("assumed"));
    private final ReadOnlyTable<Assumption> rows;
    private final JButton so;
    private final JButton change;
    private final JButton decide;
    private List<Assumption> shown = List.of();

    /** @param go leads to the field of a place */
    AssumedPane(JobSession session, Consumer<String> go) {
        super(new MigLayout("insets 0, gap 8 6, fillx, hidemode 3", "[][][grow]"));
        this.session = session;
        this.go = go;
        setOpaque(false);
        rows = new ReadOnlyTable<>(
                "assumed",
                List.of(
                        ReadOnlyTable.Column.text(
                                "assumed.what", 6, one -> PointerNames.named(one.place(), session.draft())),
                        ReadOnlyTable.Column.text("assumed.value", 6, AssumedPane::value),
                        ReadOnlyTable.Column.text("assumed.kind", 6, one -> kind(one.kind()))));
        so = button("assumed.so", () -> rows.chosen().ifPresent(this::confirm));
        change = button(
                "assumed.change", () -> rows.chosen().map(Assumption::place).ifPresent(go));
        decide = button("assumed.decide", this::decide);
        rows.pane().setPreferredSize(new Dimension(300, HIGH));
        rows.onOpened(this::confirm);
        rows.onChosen(this::allow);
        add(said, "span 3, growx, wmin 100");
        add(rows.pane(), "newline, span 3, growx, wmin 100");
        add(so, "newline");
        add(change);
        add(decide);
    }

    private static JButton button(String key, Runnable act) {
        JButton button = new JButton(KeyBindings.action(Messages.of(key), act));
        button.setName(key);
        button.getAccessibleContext().setAccessibleName(Messages.of(key));
        return button;
    }

    private static String value(Assumption one) {
        return one.kind() == Kind.UNWRITTEN ? "" : Messages.or("choice." + one.value(), one.value());
    }

    private static String kind(Kind kind) {
        return Messages.of("assumed." + kind.name().toLowerCase(Locale.ROOT));
    }

    private void confirm(Assumption one) {
        if (one.kind() == Kind.UNWRITTEN) {
            go.accept(one.place());
        } else {
            session.edit(Assumptions.taken(session.draft(), one));
        }
    }

    /** Writes all that is the contractor's own to decide. */
    void decide() {
        session.assumed().ifPresent(all -> session.edit(all.decided(session.draft())));
    }

    private void allow() {
        Optional<Assumption> chosen = rows.chosen();
        so.setEnabled(chosen.filter(one -> one.kind() != Kind.UNWRITTEN).isPresent());
        change.setEnabled(chosen.isPresent());
    }

    void showAnswer() {
        List<Assumption> now = session.assumed().map(Assumptions::all).orElse(List.of());
        if (!now.equals(shown)) {
            shown = now;
            rows.show(now, Assumption::place);
        }
        long decided = now.stream().filter(one -> one.kind() == Kind.DECIDED).count();
        decide.setText(Messages.of("assumed.decide", decided));
        decide.setEnabled(decided > 0);
        said.setText(Messages.of(now.isEmpty() ? "assumed.none" : "assumed.said", now.size()));
        allow();
    }
}
