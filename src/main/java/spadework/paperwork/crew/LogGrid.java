// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Walls that are asked the same, side by side.
 *
 * @param columns a title for each wall
 * @param tab the walls, short enough for the name of a sheet
 */
public record LogGrid(List<String> columns, String tab, List<Row> rows) {
    /** Walls for which a page has room beside one another. */
    private static final int MOST = 4;

    public LogGrid {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * A thing to write down.
     *
     * @param planned at each wall; empty where nothing was
     */
    public record Row(String what, List<String> planned) {

        public Row {
            planned = List.copyOf(planned);
        }
    }

    /** The walls in their order, those in a row that are asked the same in one. */
    static List<LogGrid> of(List<LogPart> walls) {
        List<LogGrid> grids = new ArrayList<>();
        for (int from = 0; from < walls.size(); ) {
            int to = from + 1;
            while (to < walls.size() && to - from < MOST && asked(walls.get(to)).equals(asked(walls.get(from)))) {
                to++;
            }
            grids.add(grid(walls.subList(from, to)));
            from = to;
        }
        return grids;
    }

    private static List<String> asked(LogPart wall) {
        return wall.rows().stream().map(LogRow::what).toList();
    }

    private static LogGrid grid(List<LogPart> walls) {
        List<String> asked = asked(walls.get(0));
        String last = walls.get(walls.size() - 1).tab();
        return new LogGrid(
                walls.stream().map(LogPart::title).toList(),
                walls.size() == 1 ? last : walls.get(0).tab() + " - " + last,
                IntStream.range(0, asked.size())
                        .mapToObj(i -> new Row(
                                asked.get(i),
                                walls.stream()
                                        .map(wall -> wall.rows().get(i).planned())
                                        .toList()))
                        .toList());
    }
}
