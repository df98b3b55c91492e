// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The default selling prices against the INDOT unit bid tabulations, lettings January 2025 to May 2026: one state's
 * highway bids, a fence for plausibility and no local price.
 */
class DefaultPricesLieInPublishedBandsTest {

    /** A solid main lies in a trench 18 in wide and 3 ft deep: 4.5 cf, 0.167 cy a foot, dug and refilled. */
    private static final String ROWS = """
            # pay item | of the book
            203-02000  | DIG-MACH
            206-51230  | DIG-MACH
            206-51230  | DIG-MACH + SPOIL-MOVE
            203-02000  | DIG-BULK + SPOIL-MOVE
            203-02000  | SLOPE-BENCH
            203-02000  | TRENCH-PIPE
            206-51220  | U-WET
            203-02010  | U-ROCK
            # borrow is bid placed and compacted
            203-02070  | IMPORT + BACK-LIFT
            203-02070  | U-SOIL + BACK-LIFT
            203-02070  | BACK-LIFT + IMPORT
            211-09265  | BACK-GRAN
            211-02050  | BACK-GRAN
            213-09269  | FLOW-FILL
            718-52610  | STONE-MACH
            718-52610  | STONE-HAND
            303-01180  | BASE-53
            616-05688  | RIPRAP
            715-05203  | PIPE-PERF4
            715-05048  | PIPE-PERF6
            # the 4 in tabulation is thin, 19 bids on 6 contracts: corrugated 4 in stands in the 6 in band
            715-05048  | PIPE-COIL4
            # outlet pipe is bid in place; there is no 4 in row, so 4 in stands in the 6 in band
            715-05053  | MAIN-4 + 0.167 TRENCH-PIPE + 0.167 BACK-LIFT
            715-05053  | MAIN-6 + 0.167 TRENCH-PIPE + 0.167 BACK-LIFT
            715-05053  | ROOF-6 + 0.167 TRENCH-PIPE + 0.167 BACK-LIFT
            718-12305  | FABRIC-TOP
            718-12308  | FABRIC-HEAVY
            718-06528  | OUT-PAD
            718-09979  | OUT-CLEAN
            718-06532  | PIPE-CAMERA
            715-01354  | PIPE-FLUSH
            714-000086 | COAT-RUB
            714-000086 | COAT-ASP
            714-000086 | COAT-CEM
            714-000086 | SHEET-ASP
            714-000087 | SHEET-HEAVY
            621-06570  | TOPSOIL
            621-06559  | SEED
            621-06574  | SOD
            604-06070  | CONC-NEW
            202-52710  | CONC-OUT
            202-02240  | ASPH-OUT
            201-02245  | TREE-6
            201-02250  | TREE-10
            202-91922  | STUMP
            202-96531  | FENCE-OUT
            """;

    private static final Map<String, String> BID_UNITS =
            Map.of("CY", "cy", "SY", "sy", "SF", "sf", "LF", "ft", "TON", "ton", "EA", "ea");

    private static final Pattern PAY_ITEM = Pattern.compile("\\b\\d{3}-\\d{5,6}\\b");

    private final DefaultPrice price = new DefaultPrice();

    @ParameterizedTest(name = "{1} sells inside pay item {0}")
    @CsvSource(delimiter = '|', textBlock = ROWS)
    void installedPriceLiesBetweenTheTenthAndTheSmallJobNinetiethPercentile(String payItem, String sum) {
        Band band = Band.all().get(payItem);
        BigDecimal selling = price.sellingOf(sum).setScale(2, RoundingMode.HALF_UP);

        assertThat(Shipped.items().get(lead(sum)).get("unit").asText()).isEqualTo(BID_UNITS.get(band.unit()));
        assertThat(band.holds(selling))
                .as("%s sells at $%s, band %s", sum, selling, band)
                .isTrue();
    }

    @Test
    void everyPayItemThatTheBookCitesIsHeldHereAndNoOther() {
        Set<String> cited = new TreeSet<>();
        Shipped.items().forEach((code, item) -> {
            Matcher payItem = PAY_ITEM.matcher(item.get("source").get("text").asText());
            while (payItem.find()) {
                cited.add(payItem.group() + " " + code);
            }
        });
        Set<String> held = ROWS.lines()
                .filter(row -> !row.startsWith("#"))
                .map(row -> row.split("\\|"))
                .map(cells -> cells[0].strip() + " " + lead(cells[1]))
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(held).isEqualTo(cited).hasSizeGreaterThanOrEqualTo(18);
    }

    /**
     * Hand digging has no pay item: it may pass the machine band. Published labor constants give 0.60 cy an hour in
     * heavy clay to 5 ft and 4.2 cy an hour to wheel it 33 to 66 ft, for one worker; two work.
     */
    @Test
    void handDiggingFollowsThePublishedLaborConstantsAndCostsMoreThanTheMachine() {
        BigDecimal hours = BigDecimal.valueOf(1 / 0.60 + 1 / 4.2);
        BigDecimal two = BigDecimal.valueOf(2).divide(hours, 2, RoundingMode.HALF_UP);

        assertThat(Shipped.number(Shipped.items().get("DIG-HAND").get("labor").get("perHour")))
                .isEqualByComparingTo(two);
        assertThat(price.sellingOf("DIG-HAND")).isGreaterThan(price.sellingOf("DIG-MACH"));
        assertThat(price.sellingOf("U-HAND")).isGreaterThan(price.sellingOf("DIG-MACH"));
    }

    /** Calculated check of the build-up: 12,000 with 10% contingency, 20% overhead and a 12% margin is 18,000. */
    @Test
    void theBuildUpGivesTheWorkedPrice() {
        assertThat(price.sell(new BigDecimal("12000"))).isEqualByComparingTo("18000");
    }

    @ParameterizedTest(name = "{1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # row with small quantities told apart, then one without
            k,1-1,CY,1,1,10.00,2,3,4,50.00,200,1,2,3,4,90.00 | 9.99  | false
            k,1-1,CY,1,1,10.00,2,3,4,50.00,200,1,2,3,4,90.00 | 10.00 | true
            k,1-1,CY,1,1,10.00,2,3,4,50.00,200,1,2,3,4,90.00 | 90.00 | true
            k,1-1,CY,1,1,10.00,2,3,4,50.00,200,1,2,3,4,90.00 | 90.01 | false
            k,1-1,CY,1,1,10.00,2,3,4,50.00,,,,,,             | 50.00 | true
            k,1-1,CY,1,1,10.00,2,3,4,50.00,,,,,,             | 50.01 | false
            """)
    void bandReachesToTheSmallJobPriceWhereThereIsOne(String row, BigDecimal selling, boolean inside) {
        assertThat(Band.read(row).holds(selling)).isEqualTo(inside);
    }

    private static String lead(String sum) {
        return Arrays.stream(sum.strip().split(" ")).findFirst().orElseThrow();
    }
}
