package halfwave.picture.chart;

import halfwave.display.DisplayUnit;
import halfwave.sequence.Sample;
import org.jfree.data.xy.XYSeries;
import org.jspecify.annotations.Nullable;

/**
 * A current over time, reduced to the columns of a picture: of each column the first, the lowest,
 * the highest and the last value, so that nothing that sticks out is lost.
 */
final class CurrentColumns {

  /** What is kept of one column, in the order of time. */
  private static final class Column {
    private final Sample first;
    private Sample low;
    private Sample high;
    private Sample last;

    Column(Sample sample) {
      first = sample;
      low = sample;
      high = sample;
      last = sample;
    }

    void add(Sample sample) {
      low = sample.filteredAmps() < low.filteredAmps() ? sample : low;
      high = sample.filteredAmps() > high.filteredAmps() ? sample : high;
      last = sample;
    }
  }

  private final long fromMillis;
  private final long untilMillis;
  private final double columnMillis;
  private final @Nullable Column[] columns;

  CurrentColumns(long fromMillis, long untilMillis, int count) {
    this.fromMillis = fromMillis;
    this.untilMillis = untilMillis;
    columnMillis = (double) (untilMillis - fromMillis) / count;
    columns = new Column[count];
  }

  void add(Sample sample) {
    int k = (int) ((sample.timeMillis() - fromMillis) / columnMillis);
    int at = Math.max(0, Math.min(columns.length - 1, k));
    Column column = columns[at];
    if (column == null) {
      columns[at] = new Column(sample);
    } else {
      column.add(sample);
    }
  }

  /** The points in display units. */
  XYSeries series(TimeScale time, String name) {
    XYSeries series = new XYSeries(name, false, true);
    for (Column column : columns) {
      if (column == null) {
        continue;
      }
      boolean lowFirst = column.low.timeMillis() <= column.high.timeMillis();
      Sample[] kept = {
        column.first,
        lowFirst ? column.low : column.high,
        lowFirst ? column.high : column.low,
        column.last
      };
      Sample before = null;
      for (Sample sample : kept) {
        if (!sample.equals(before)) {
          series.add(time.shown(sample.timeMillis()), microamps(sample), false);
        }
        before = sample;
      }
    }
    if (!series.isEmpty()) {
      // nothing is sampled where nothing changes any more
      series.add(time.shown(untilMillis), series.getY(series.getItemCount() - 1), false);
    }
    return series;
  }

  private static double microamps(Sample sample) {
    return DisplayUnit.MICROAMP.fromSi(sample.filteredAmps());
  }
}
