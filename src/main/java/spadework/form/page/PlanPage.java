// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import spadework.draft.Pointer;
import spadework.form.field.BasePointer;
import spadework.form.kit.Messages;
import spadework.form.session.JobSession;

/** The house drawn: what is dragged or typed on the plan stands in the lists of the job, and the other way round. */
public final class PlanPage extends FormPage {
    private final PlanCanvas canvas;
    private final Map<PlanTool, JToggleButton> tools = new EnumMap<>(PlanTool.class);

    public PlanPage(JobSession session) {
        super(session, "plan");
        canvas = new PlanCanvas(session, row -> showAll());
        group("plan");
        JPanel bar = new JPanel(new MigLayout("insets 0, gap 4, wrap 3"));
        bar.setOpaque(false);
        ButtonGroup group = new ButtonGroup();
        for (PlanTool tool : PlanTool.values()) {
            JToggleButton button =
                    new JToggleButton(Messages.of("plan.tool", Messages.of("plan.tool." + tool.word()), tool.key()));
            button.setName("plan " + tool.word());
            button.setSelected(tool == PlanTool.WALL);
            button.setFocusable(false);
            button.addActionListener(event -> canvas.use(tool));
            button.getAccessibleContext().setAccessibleName(button.getText());
            group.add(button);
            tools.put(tool, button);
            bar.add(button);
        }
        canvas.input().onTool(tool -> tools.get(tool).setSelected(true));
        put(bar, "span 12");
        put(canvas, "span 12, wmin 200, hmin 200");
        BasePointer wall = new BasePointer(
                "/walls/0",
                () -> canvas.input().selected() < 0
                        ? Optional.empty()
                        : Optional.of(Pointer.of("/walls", canvas.input().selected())));
        group("plan.wall");
        field(wall, "/length", 2);
        field(wall, "/from", 2);
        field(wall, "/depth/start", 2);
        field(wall, "/depth/end", 2);
        field(wall, "/where", 4);
        group("plan.house");
        field("/site/house/eastWest", 3);
        field("/site/house/northSouth", 3);
        BasePointer drain = row("/water/drains");
        BasePointer outlet = row("/water/outlets");
        field(drain, "/startInvert", 3);
        field(drain, "/endInvert", 3);
        field(outlet, "/fromHouse", 3);
        field(outlet, "/level", 3);
    }

    private BasePointer row(String list) {
        return new BasePointer(
                list + "/0", () -> session().draft().rows(list) > 0 ? Optional.of(list + "/0") : Optional.empty());
    }

    /** The keyboard goes to the plan. */
    @Override
    public void begin() {
        canvas.requestFocusInWindow();
    }

    @Override
    public void showAll() {
        if (canvas != null) {
            canvas.input().showDraft();
        }
        super.showAll();
    }

    @Override
    public void showFaults() {
        super.showFaults();
        if (canvas != null) {
            canvas.input().showDraft();
        }
    }
}
