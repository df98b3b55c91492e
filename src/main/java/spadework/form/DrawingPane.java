package spadework.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import spadework.drawing.Scene;
import spadework.office.Bid;

/** The plan, and the trench cut across at the wall that is chosen, drawn anew with every measure. */
final class DrawingPane extends JPanel {
    private final Desk desk;
    private final ScenePicture plan = new ScenePicture("plan");
    private final ScenePicture section = new ScenePicture("section");
    private String wall = "";

    DrawingPane(Desk desk) {
        super(new MigLayout("insets 0, gap 6, fill, wrap 1", "[grow,fill]", "[grow 55,fill][grow 45,fill]"));
        this.desk = desk;
        add(plan, "hmin 80, wmin 80");
        add(section, "hmin 80, wmin 80");
    }

    /** The wall whose trench is shown. */
    void choose(String label) {
        wall = label;
        showAnswer();
    }

    void showAnswer() {
        if (!isShowing()) {
            return;
        }
        plan.show(desk.bid().map(Bid::plan));
        section.show(desk.bid().map(Bid::sections).flatMap(this::chosen));
    }

    private Optional<Scene> chosen(Map<List<String>, Scene> sections) {
        return sections.entrySet().stream()
                .filter(entry -> entry.getKey().contains(wall))
                .map(Map.Entry::getValue)
                .findFirst()
                .or(() -> sections.values().stream().findFirst());
    }
}
