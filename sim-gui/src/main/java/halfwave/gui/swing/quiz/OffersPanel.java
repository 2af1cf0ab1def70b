package halfwave.gui.swing.quiz;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.Offer;
import halfwave.gui.presentation.quiz.Visiting;
import halfwave.gui.swing.bench.FurnacePicture;
import halfwave.gui.swing.widget.CautionPlate;
import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Forms;
import halfwave.gui.swing.widget.Keys;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.QuietField;
import halfwave.gui.swing.widget.Theme;
import halfwave.gui.swing.widget.Typing;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Visit;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** What can be done on a service call: checks, repairs, and the furnace as it should be. */
final class OffersPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  /** Names of tabs and two rows (px). */
  private static final int LEAST_LIST = 110;

  /** A name in two lines and what it costs (px); more is scrolled. */
  private static final int LEAST_FOOT = 70;

  private final transient Wording words;
  private final transient Visiting visiting;
  private final QuietField search = new QuietField();
  private final OfferList checks;
  private final OfferList repairs;
  private final FurnacePicture furnace;
  private final JTabbedPane tabs = new JTabbedPane();
  private final JTextArea name;
  private final JTextArea costs;
  private final CautionPlate stillOn;
  private final JTextArea cautions;
  private final JButton act;
  private final JScrollPane foot;
  private transient @Nullable ServiceCall shownFor;

  OffersPanel(Theme theme, Wording words, Visiting visiting) {
    super(
        new MigLayout(
            "insets 0, gap 6, fill, novisualpadding, hidemode 3",
            "[][grow,fill]",
            // the list gives way first, but some of it is always seen
            "[][%dpx::,grow,fill,shrinkprio 200][%dpx::][]"
                .formatted(theme.px(LEAST_LIST), theme.px(LEAST_FOOT))));
    this.words = words;
    this.visiting = visiting;
    setOpaque(false);
    var p = theme.palette();
    checks =
        new OfferList(theme, "visit.checks", words.text("visit.checks"), this::told, this::act);
    repairs =
        new OfferList(theme, "visit.repairs", words.text("visit.repairs"), this::told, this::act);
    furnace = new FurnacePicture(theme, words, "visit.furnace");
    JLabel label = Lettering.label(words.text("visit.search"), theme.body(), p.ink());
    label.setLabelFor(search);
    search.setName("visit.search");
    search.setToolTipText(words.text("visit.search-tip"));
    search.getAccessibleContext().setAccessibleName(words.text("visit.search"));
    Typing.on(search, this::narrow);
    Keys.bind(search, WHEN_FOCUSED, KeyEvent.VK_DOWN, this::toList);
    Keys.bind(search, WHEN_FOCUSED, KeyEvent.VK_ENTER, this::toList);
    add(label);
    add(search, "wmin 0, hmin " + theme.px(24) + "px, wrap");
    tabs.setName("visit.offers");
    tabs.getAccessibleContext().setAccessibleName(words.text("visit.offers"));
    tabs.addTab(words.text("visit.checks"), checks.scrolled());
    tabs.addTab(words.text("visit.repairs"), repairs.scrolled());
    tabs.addTab(words.text("visit.furnace"), furnace);
    add(tabs, "span, wmin 0, grow, wrap");
    name = Lettering.paragraph("", theme.heading(), p.ink());
    costs = Lettering.paragraph("", theme.body(), p.softInk());
    stillOn = new CautionPlate(theme, words.text("work.first"));
    stillOn.setName("visit.still-on");
    cautions = Lettering.paragraph("", theme.note(), p.softInk());
    cautions.setName("visit.first");
    act = Forms.button(words, "visit.act", "visit.act-tip", this::act);
    Column told = new Column(theme);
    told.setBorder(BorderFactory.createEmptyBorder());
    told.add(foot(), "growx, wmin 0");
    foot = told.scrolled();
    tabs.addChangeListener(e -> told());
    // as high as most need it: the lists above do not move with every choice
    String usual = "h 0:%1$dpx:%1$dpx".formatted(theme.px(150));
    add(new JLabel(), "split 2, span, w 0!, gapright 0, hidemode 0, " + usual);
    add(foot, "grow, wmin 0, hmin 0, wrap");
    // below all that is to be minded, and never scrolled away
    add(act, "span, growx");
  }

  /** What is chosen, what it costs, what to take care of. */
  private JPanel foot() {
    JPanel made =
        new JPanel(
            new MigLayout(
                "insets 4 0 0 0, gap 8 2, fillx, novisualpadding, hidemode 3", "[grow,fill]"));
    made.setOpaque(false);
    made.add(name, "growx, wmin 0, wrap");
    made.add(costs, "growx, wmin 0, wrap");
    made.add(stillOn, "growx, wmin 0, wrap");
    made.add(cautions, "growx, wmin 0");
    return made;
  }

  private OfferList offered() {
    return tabs.getSelectedIndex() == 1 ? repairs : checks;
  }

  private @Nullable Offer chosen() {
    return tabs.getSelectedIndex() == 2 ? null : offered().chosen();
  }

  /** Brings the keyboard to the list in front. */
  void toList() {
    if (tabs.getSelectedIndex() == 2) {
      tabs.setSelectedIndex(0);
    }
    offered().requestFocusInWindow();
  }

  /** Another one is chosen. */
  private void told() {
    Offer offer = chosen();
    foot.setVisible(tabs.getSelectedIndex() != 2);
    name.setText(offer == null ? words.text("visit.nothing-found") : offer.name());
    costs.setText(offer == null ? " " : words.text("visit.at", offer.place(), offer.costs()));
    String minded = offer == null ? "" : String.join("\n", offer.cautions());
    cautions.setText(minded.isEmpty() ? "" : words.text("work.first") + ":\n" + minded);
    cautions.setVisible(!minded.isEmpty());
    free();
    foot.getViewport().setViewPosition(new Point(0, 0));
    revalidate();
  }

  /** What can be done with the chosen one now, and what is to be minded before it. */
  private void free() {
    Offer offer = chosen();
    Visit visit = visiting.visit();
    act.setEnabled(offer != null && !visiting.busy() && !visiting.closed());
    stillOn.show(
        offer == null || visit == null || visiting.closed()
            ? List.of()
            : offer.warnings(visit, words));
  }

  private void act() {
    Offer offer = chosen();
    if (offer != null && act.isEnabled()) {
      visiting.want(offer.move());
    }
  }

  void refresh() {
    Visit visit = visiting.visit();
    ServiceCall call = visit == null ? null : visit.variant().call();
    if (call != null && !call.equals(shownFor)) {
      shownFor = call;
      search.setText("");
      tabs.setSelectedIndex(0);
      checks.show(Offer.checks(call, words));
      repairs.show(Offer.repairs(call, words));
      furnace.show(visiting.furnace());
      told();
    }
    free();
  }

  /** Narrows both lists down while somebody types. */
  private void narrow() {
    checks.narrow(search.getText());
    repairs.narrow(search.getText());
  }
}
