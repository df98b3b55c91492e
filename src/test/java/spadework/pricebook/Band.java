// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The plausible prices of a pay item: from the 10th percentile of all bids to the 90th percentile of bids for small
 * quantities, or of all bids where small ones are not told apart.
 */
record Band(String payItem, String unit, BigDecimal low, BigDecimal high) {
    private static final String FILE = "unit-price-bands.csv";
    private static final int PAY_ITEM = 1;
    private static final int UNIT = 2;
    private static final int P10 = 5;
    private static final int P90 = 9;
    private static final int SMALL_P90 = 15;

    boolean holds(BigDecimal price) {
        return price.compareTo(low) >= 0 && price.compareTo(high) <= 0;
    }

    static Band read(String row) {
        String[] cells = row.split(",", -1);
        String high = cells[SMALL_P90].isEmpty() ? cells[P90] : cells[SMALL_P90];
        return new Band(cells[PAY_ITEM], cells[UNIT], new BigDecimal(cells[P10]), new BigDecimal(high));
    }

    /** Every band of the file, by pay item. */
    static Map<String, Band> all() {
        try (BufferedReader file = new BufferedReader(
                new InputStreamReader(Band.class.getResourceAsStream(FILE), StandardCharsets.UTF_8))) {
            return file.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("key,"))
                    .map(Band::read)
                    .collect(Collectors.toMap(Band::payItem, band -> band));
        } catch (IOException e) {
            throw new IllegalStateException(FILE, e);
        }
    }
}
