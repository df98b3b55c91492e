package spadework.form;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A control that is bound to a place of the job. */
interface Entry {

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
}
