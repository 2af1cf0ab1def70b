package halfwave.gui.swing.desk;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.desk.TableView;
import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.Theme;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableColumn;
import org.jspecify.annotations.Nullable;

/** A table of words, one row of which may be chosen. */
final class DeskTable extends JTable {

  private static final long serialVersionUID = 1L;
  private static final int WIDEST = 220;

  /** Narrower columns break words (px). */
  private static final int LEAST = 72;

  private static final int SEEN_ROWS = 3;

  /** So much stands on a line of what the pointer tells. */
  private static final String TIP_LINE = "(.{1,70})(?:\\s+|$)";

  private final transient Theme theme;
  private final transient WrappedCell cell;
  private final transient Map<String, String> explained = new HashMap<>();
  private transient IntFunction<String> told = row -> "";
  private transient @Nullable TableView shown;

  DeskTable(Theme theme, String name, String title, Runnable chosen) {
    this.theme = theme;
    cell = new WrappedCell(theme);
    setDefaultRenderer(Object.class, cell);
    setName(name);
    getAccessibleContext().setAccessibleName(title);
    setSelectionBackground(theme.palette().accent());
    setSelectionForeground(theme.palette().sheet());
    setFont(theme.body());
    getTableHeader().setFont(theme.note());
    getTableHeader().setReorderingAllowed(false);
    if (getTableHeader().getDefaultRenderer() instanceof JLabel head) {
      // as the cells below
      head.setHorizontalAlignment(SwingConstants.LEADING);
    }
    setRowHeight(theme.px(26));
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    setShowGrid(false);
    setFillsViewportHeight(true);
    // the usual table keeps the tabulator to itself
    for (int id :
        List.of(
            KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS,
            KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS)) {
      setFocusTraversalKeys(
          id,
          KeyboardFocusManager.getCurrentKeyboardFocusManager().getDefaultFocusTraversalKeys(id));
    }
    getSelectionModel()
        .addListSelectionListener(
            e -> {
              if (!e.getValueIsAdjusting()) {
                chosen.run();
              }
            });
  }

  /** What a double click on a row, or Enter, does with it. */
  void opens(Runnable action) {
    Keys.bind(this, WHEN_FOCUSED, KeyEvent.VK_ENTER, action);
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            boolean twice = e.getClickCount() == 2 && SwingUtilities.isLeftMouseButton(e);
            if (twice && rowAtPoint(e.getPoint()) >= 0) {
              action.run();
            }
          }
        });
  }

  /** Shows a table; the chosen row stays where there still is one. */
  void show(TableView view) {
    if (view.equals(shown)) {
      return;
    }
    boolean sameColumns = shown != null && shown.columns().equals(view.columns());
    shown = view;
    int row = getSelectedRow();
    setModel(new Cells(view));
    if (row >= 0 && sameColumns && row < view.rows().size()) {
      choose(row);
    }
    for (int c = 0; c < view.columns().size(); c++) {
      widen(c);
    }
    if (getParent() instanceof JViewport port) {
      // what is new is read from its beginning
      port.setViewPosition(new Point(0, sameColumns ? port.getViewPosition().y : 0));
    }
  }

  private void widen(int c) {
    TableColumn column = getColumnModel().getColumn(c);
    Component head =
        getTableHeader()
            .getDefaultRenderer()
            .getTableCellRendererComponent(this, column.getHeaderValue(), false, false, -1, c);
    int width = head.getPreferredSize().width;
    int least = Math.max(theme.px(LEAST), width + theme.px(6));
    for (int r = 0; r < getRowCount(); r++) {
      width = Math.max(width, cell.width(text(r, c)));
    }
    int usual = Math.min(theme.px(WIDEST), width + theme.px(14));
    column.setMinWidth(Math.min(least, usual));
    column.setPreferredWidth(usual);
  }

  /** Chooses a row. */
  void choose(int row) {
    if (row != getSelectedRow()) {
      setRowSelectionInterval(row, row);
    }
  }

  /** Long cells give way before anybody has to scroll sideways. */
  @Override
  public boolean getScrollableTracksViewportWidth() {
    int least =
        Collections.list(getColumnModel().getColumns()).stream()
            .mapToInt(TableColumn::getMinWidth)
            .sum();
    return getParent() == null || least <= getParent().getWidth();
  }

  /** Says what these headings mean to whoever rests the pointer on them. */
  void explain(Wording words, String... heads) {
    for (String head : heads) {
      explained.put(words.text("desk.head-" + head), words.text("desk.head-" + head + "-tip"));
    }
  }

  @Override
  protected JTableHeader createDefaultTableHeader() {
    return new JTableHeader(getColumnModel()) {
      private static final long serialVersionUID = 1L;

      @Override
      public @Nullable String getToolTipText(MouseEvent event) {
        int c = columnAtPoint(event.getPoint());
        String heading = c < 0 ? "" : getColumnName(c);
        return heading.isEmpty() ? null : explained.getOrDefault(heading, heading);
      }
    };
  }

  /** Says more about a row to whoever rests the pointer on it. */
  void tells(IntFunction<String> more) {
    told = more;
  }

  @Override
  public @Nullable String getToolTipText(MouseEvent event) {
    int row = rowAtPoint(event.getPoint());
    String text = row < 0 ? "" : told.apply(row);
    return text.isEmpty() ? null : text.replaceAll(TIP_LINE, "$1\n").strip();
  }

  private String text(int row, int column) {
    return String.valueOf(getValueAt(row, column));
  }

  /** A row is as high as its longest cell needs. */
  @Override
  public void doLayout() {
    super.doLayout();
    for (int r = 0; r < getRowCount(); r++) {
      int height = getRowHeight();
      for (int c = 0; c < getColumnCount(); c++) {
        height =
            Math.max(height, cell.height(text(r, c), getColumnModel().getColumn(c).getWidth()));
      }
      if (height != getRowHeight(r)) {
        setRowHeight(r, height);
      }
    }
  }

  JScrollPane scrolled() {
    JScrollPane pane = new JScrollPane(this);
    pane.setBorder(BorderFactory.createLineBorder(theme.palette().hairline()));
    pane.setMinimumSize(new Dimension(theme.px(120), theme.px(26) * SEEN_ROWS));
    pane.setPreferredSize(new Dimension(theme.px(300), theme.px(26) * (SEEN_ROWS + 2)));
    return pane;
  }

  private static final class Cells extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient TableView view;

    Cells(TableView view) {
      this.view = view;
    }

    @Override
    public int getRowCount() {
      return view.rows().size();
    }

    @Override
    public int getColumnCount() {
      return view.columns().size();
    }

    @Override
    public String getColumnName(int column) {
      return view.columns().get(column);
    }

    @Override
    public Object getValueAt(int row, int column) {
      return view.rows().get(row).get(column);
    }
  }
}
