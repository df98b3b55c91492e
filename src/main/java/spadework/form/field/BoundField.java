// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import spadework.form.kit.LabeledControl;
import spadework.form.session.JobSession;

/** A control that is bound to a place of the job. */
public interface BoundField {

    /** Where it stands; nowhere while no row is chosen. */
    Optional<String> pointer();

    /** What takes the keyboard. */
    JComponent control();

    /** The control under its label, with what is wrong below it. */
    JPanel panel();

    /** Shows what the draft says now. */
    void showDraft();

    /** Shows what is wrong there. */
    void showFaults();

    /** Marks the faults of its place on its look; lighter where nothing was typed yet. */
    default void showFaults(LabeledControl look, JobSession session) {
        look.mark(
                pointer().map(session::faultsAt).orElse(List.of()),
                pointer().filter(p -> session.draft().shown(p).isEmpty()).isPresent());
    }
}
