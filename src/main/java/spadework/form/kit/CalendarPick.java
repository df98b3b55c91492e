// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.Popup;
import javax.swing.PopupFactory;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/**
 * A calendar under a field for a day. F4, Down, or its button opens it; arrows go by days and weeks, Page Up and Page
 * Down by months; Enter or a click takes the day, Escape keeps what stood there.
 */
public final class CalendarPick {
    private static final int WEEKS = 6;
    private static final int DAYS = 7;

    private final JTextField field;
    private final Supplier<LocalDate> usual;
    private Optional<Popup> open = Optional.empty();
    private LocalDate at = LocalDate.EPOCH;

    /**
     * Puts a calendar under a field.
     *
     * @param usual the day at which it opens where none is written
     */
    public CalendarPick(JTextField field, Supplier<LocalDate> usual) {
        this.field = field;
        this.usual = usual;
        JButton button = new JButton(KeyBindings.action("\u25BE", this::press));
        button.setName("calendar");
        button.setFocusable(false);
        button.setToolTipText(Messages.of("calendar.open"));
        button.getAccessibleContext().setAccessibleName(Messages.of("calendar.open"));
        field.putClientProperty("JTextField.trailingComponent", button);
        field.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                if (key(event.getKeyCode())) {
                    event.consume();
                }
            }
        });
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                hide();
            }
        });
    }

    private void press() {
        field.requestFocusInWindow();
        if (open.isPresent()) {
            hide();
        } else {
            begin();
        }
    }

    /** Opens at the day that is written, or at the usual one. */
    public void begin() {
        try {
            at = LocalDate.parse(field.getText().strip());
        } catch (DateTimeException none) {
            at = usual.get();
        }
        show();
    }

    private boolean key(int code) {
        if (open.isEmpty()) {
            // Down in a cell goes to the next row.
            boolean inCell = SwingUtilities.getAncestorOfClass(JTable.class, field) != null;
            boolean opens = code == KeyEvent.VK_F4 || (code == KeyEvent.VK_DOWN && !inCell);
            if (opens) {
                begin();
            }
            return opens;
        }
        Optional<LocalDate> to = switch (code) {
            case KeyEvent.VK_LEFT -> Optional.of(at.minusDays(1));
            case KeyEvent.VK_RIGHT -> Optional.of(at.plusDays(1));
            case KeyEvent.VK_UP -> Optional.of(at.minusWeeks(1));
            case KeyEvent.VK_DOWN -> Optional.of(at.plusWeeks(1));
            case KeyEvent.VK_PAGE_UP -> Optional.of(at.minusMonths(1));
            case KeyEvent.VK_PAGE_DOWN -> Optional.of(at.plusMonths(1));
            default -> Optional.empty();
        };
        if (to.isPresent()) {
            at = to.get();
            show();
            return true;
        }
        if (code == KeyEvent.VK_ENTER) {
            take(at);
            return true;
        }
        hide();
        return code == KeyEvent.VK_ESCAPE;
    }

    private void take(LocalDate day) {
        hide();
        field.setText(day.toString());
    }

    private void hide() {
        open.ifPresent(Popup::hide);
        open = Optional.empty();
    }

    private void show() {
        hide();
        if (!field.isShowing()) {
            return;
        }
        JPanel month = month();
        Dimension size = month.getPreferredSize();
        Point place = new Point(0, field.getHeight() + 1);
        SwingUtilities.convertPointToScreen(place, field);
        Rectangle screen = field.getGraphicsConfiguration().getBounds();
        if (place.y + size.height > screen.y + screen.height) {
            place.y -= field.getHeight() + size.height + 2;
        }
        place.x = Math.max(screen.x, Math.min(place.x, screen.x + screen.width - size.width));
        Popup made = PopupFactory.getSharedInstance().getPopup(field, month, place.x, place.y);
        made.show();
        open = Optional.of(made);
    }

    private JPanel month() {
        JPanel panel = new JPanel(new MigLayout("insets 8, gap 4, wrap 3", "[][grow,center][]"));
        panel.setName("calendar days");
        Color line = UIManager.getColor("Component.borderColor");
        panel.setBorder(BorderFactory.createLineBorder(line == null ? Color.GRAY : line));
        String title = at.getMonth().getDisplayName(TextStyle.FULL, Locale.US) + " " + at.getYear();
        panel.add(step("\u2039", "calendar.before", -1));
        panel.add(new JLabel(title));
        panel.add(step("\u203A", "calendar.after", 1));
        JPanel days = new JPanel(new GridLayout(WEEKS + 1, DAYS, 2, 2));
        for (int i = 0; i < DAYS; i++) {
            DayOfWeek day = DayOfWeek.SUNDAY.plus(i);
            days.add(new JLabel(day.getDisplayName(TextStyle.NARROW, Locale.US), SwingConstants.CENTER));
        }
        LocalDate first = YearMonth.from(at).atDay(1).with(TemporalAdjusters.previousOrSame(DayOfWeek.SUNDAY));
        for (int i = 0; i < WEEKS * DAYS; i++) {
            days.add(day(first.plusDays(i)));
        }
        panel.add(days, "span 3");
        return panel;
    }

    private JButton step(String words, String key, int months) {
        JButton button = new JButton(KeyBindings.action(words, () -> {
            at = at.plusMonths(months);
            show();
        }));
        button.setFocusable(false);
        button.getAccessibleContext().setAccessibleName(Messages.of(key));
        return button;
    }

    private JLabel day(LocalDate day) {
        JLabel label = new JLabel(Integer.toString(day.getDayOfMonth()), SwingConstants.CENTER);
        label.setName("day " + day);
        label.setOpaque(true);
        label.setBorder(BorderFactory.createEmptyBorder(3, 6, 3, 6));
        boolean chosen = day.equals(at);
        boolean here = YearMonth.from(day).equals(YearMonth.from(at));
        label.setBackground(UIManager.getColor(chosen ? "List.selectionBackground" : "List.background"));
        label.setForeground(UIManager.getColor(
                chosen ? "List.selectionForeground" : here ? "Label.foreground" : "Label.disabledForeground"));
        label.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                take(day);
            }
        });
        return label;
    }
}
