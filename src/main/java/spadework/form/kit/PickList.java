// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.Popup;
import javax.swing.PopupFactory;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;

/**
 * What can be written in a field, under it while it is typed in: all that has the typed words somewhere, the likeliest
 * first. Enter or a click takes the one that is marked, Tab only one whose code begins so; Escape keeps what was typed.
 */
public final class PickList {
    private static final int MOST = 60;
    private static final int ROWS = 9;
    /** So many letters are a word of a name. */
    private static final int WORD = 3;

    private final JTextComponent field;
    private final Supplier<List<WordChoice>> all;
    private final boolean series;
    private final DefaultListModel<WordChoice> found = new DefaultListModel<>();
    private final JList<WordChoice> list = new JList<>(found);
    private Optional<Popup> open = Optional.empty();
    private boolean moved;
    /** Whether words were typed that nothing was picked for yet. */
    private boolean asked;
    /** Whether words were typed that were not looked for yet: a fast hand leaves the field before the list opens. */
    private boolean behind;

    /**
     * Puts the list under a field.
     *
     * @param all what can be picked, as it is when somebody types
     * @param series whether the field takes several, parted by commas
     */
    public PickList(JTextComponent field, Supplier<List<WordChoice>> all, boolean series) {
        this.field = field;
        this.all = all;
        this.series = series;
        list.setFocusable(false);
        list.setName("picks");
        list.getAccessibleContext().setAccessibleName(Messages.of("picks"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(PlainText.of(new DefaultListCellRenderer()));
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                int index = list.locationToIndex(event.getPoint());
                if (index >= 0) {
                    list.setSelectedIndex(index);
                    take();
                }
            }
        });
        field.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                press(event);
            }
        });
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                // The first keys of a cell come before the keyboard does.
                if (asked) {
                    offer(false);
                }
            }

            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) {
                    finish();
                }
            }
        });
    }

    /** Nothing is typed yet: the field shows another place. */
    public void begin() {
        asked = false;
        behind = false;
        hide();
    }

    /** Shows all that can be picked. */
    public void openAll() {
        offer(true);
    }

    /** Somebody typed in the field. */
    public void typed() {
        asked = true;
        behind = true;
        SwingUtilities.invokeLater(() -> {
            if (asked) {
                offer(false);
            }
        });
    }

    /** The field is left: takes what the typed words begin. */
    public void finish() {
        takeLikely(Integer.MAX_VALUE);
    }

    private void press(KeyEvent event) {
        boolean shown = open.isPresent();
        switch (event.getKeyCode()) {
            case KeyEvent.VK_DOWN -> {
                if (shown) {
                    step(1);
                    event.consume();
                } else if (SwingUtilities.getAncestorOfClass(javax.swing.JTable.class, field) == null) {
                    offer(true);
                    event.consume();
                }
            }
            case KeyEvent.VK_UP -> {
                if (shown) {
                    step(-1);
                    event.consume();
                }
            }
            case KeyEvent.VK_F4 -> {
                openAll();
                event.consume();
            }
            case KeyEvent.VK_ENTER -> takeLikely(WORD);
            case KeyEvent.VK_TAB -> finish();
            case KeyEvent.VK_ESCAPE -> {
                if (shown) {
                    begin();
                    event.consume();
                }
            }
            default -> {
                // Any other key types.
            }
        }
    }

    private void step(int by) {
        int index = Math.max(0, Math.min(found.size() - 1, list.getSelectedIndex() + by));
        list.setSelectedIndex(index);
        list.ensureIndexIsVisible(index);
        moved = true;
    }

    /** The words that the list is looked through for: of a series those behind the last comma. */
    private String sought() {
        String text = field.getText();
        return (series ? text.substring(text.lastIndexOf(',') + 1) : text).strip();
    }

    private void offer(boolean whole) {
        hide();
        if (field.isFocusOwner()) {
            asked |= whole;
            look(whole);
            if (!found.isEmpty() && field.isShowing()) {
                show();
            }
        }
    }

    /** Looks for what was typed, or for all there is. */
    private void look(boolean whole) {
        String words = sought();
        found.clear();
        if (whole || !words.isEmpty()) {
            found.addAll(matching(all.get(), whole ? "" : words));
            list.setSelectedIndex(found.isEmpty() ? -1 : 0);
        }
        moved = false;
        behind = false;
    }

    /** Those that begin with the words, then those that have them somewhere. */
    static List<WordChoice> matching(List<WordChoice> all, String words) {
        String sought = words.toLowerCase(Locale.ROOT);
        List<WordChoice> first = new ArrayList<>();
        List<WordChoice> second = new ArrayList<>();
        for (WordChoice choice : all) {
            String word = choice.word().toLowerCase(Locale.ROOT);
            String shown = choice.shown().toLowerCase(Locale.ROOT);
            boolean has = List.of(sought.split("\\s+")).stream().allMatch(shown::contains);
            if (word.equals(sought)) {
                first.add(0, choice);
            } else if (word.startsWith(sought)) {
                first.add(choice);
            } else if (has) {
                second.add(choice);
            }
        }
        first.addAll(second);
        return first.stream().limit(MOST).toList();
    }

    private void show() {
        list.setFont(field.getFont());
        list.setVisibleRowCount(Math.min(ROWS, found.size()));
        JScrollPane pane = new JScrollPane(list);
        pane.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        Color line = UIManager.getColor("Component.borderColor");
        pane.setBorder(BorderFactory.createLineBorder(line == null ? Color.GRAY : line));
        Dimension size = pane.getPreferredSize();
        pane.setPreferredSize(new Dimension(Math.max(field.getWidth(), Math.min(560, size.width + 16)), size.height));
        Point at = new Point(0, field.getHeight() + 1);
        SwingUtilities.convertPointToScreen(at, field);
        Rectangle screen = field.getGraphicsConfiguration().getBounds();
        if (at.y + size.height > screen.y + screen.height) {
            at.y -= field.getHeight() + size.height + 2;
        }
        at.x = Math.max(screen.x, Math.min(at.x, screen.x + screen.width - pane.getPreferredSize().width));
        Popup made = PopupFactory.getSharedInstance().getPopup(field, pane, at.x, at.y);
        made.show();
        open = Optional.of(made);
    }

    private void hide() {
        open.ifPresent(Popup::hide);
        open = Optional.empty();
    }

    /**
     * Takes the marked one where somebody marked it, or its code begins with what was typed; one whose name has it only
     * if enough was typed to be a word. A label of one letter is in many names.
     *
     * @param word how many letters are enough
     */
    private void takeLikely(int word) {
        if (asked && behind) {
            look(false);
        }
        WordChoice marked = list.getSelectedValue();
        String typed = sought();
        boolean begins = marked != null && marked.word().regionMatches(true, 0, typed, 0, typed.length());
        if (asked && marked != null && (moved || begins || typed.length() >= word)) {
            take();
        } else {
            begin();
        }
    }

    private void take() {
        String text = field.getText();
        int from = series ? text.lastIndexOf(',') + 1 : 0;
        String taken = (from == 0 ? "" : text.substring(0, from) + " ")
                + list.getSelectedValue().word();
        if (!taken.equals(text)) {
            field.setText(taken);
        }
        begin();
    }
}
