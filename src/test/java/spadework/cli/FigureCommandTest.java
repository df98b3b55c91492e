// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** The calculators as they are typed. */
class FigureCommandTest {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    /** Runs a line as a shell would split it. */
    private int figure(String line) {
        return figure(line, List.of());
    }

    private int figure(String line, List<String> more) {
        List<String> arguments = new ArrayList<>(List.of("figure"));
        WORD.matcher(line)
                .results()
                .forEach(word -> arguments.add(word.group(1) == null ? word.group(2) : word.group(1)));
        arguments.addAll(more);
        return Spadework.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments.toArray(String[]::new));
    }

    private JsonNode answers(String line) throws IOException {
        assertThat(figure(line, List.of("--json"))).as(err.toString()).isZero();
        return new ObjectMapper().readTree(out.toString()).get("answers");
    }

    /** The first figure whose name begins so and that has that unit. */
    private double answer(String line, String name, String unit) throws IOException {
        for (JsonNode each : answers(line)) {
            if (each.get("name").asText().startsWith(name)
                    && each.get("unit").asText().equals(unit)) {
                return each.get("value").doubleValue();
            }
        }
        throw new AssertionError(name + " in " + unit + " is not among " + out);
    }

    @ParameterizedTest(name = "{0} → {1} {3} {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # line | figure | unit | published | within
            # W-03, published Manning pipe example, k 1.486
            pipe --diameter "8 in" --slope 0.5% --n 0.013 | flow | cfs | 0.8545 | 0.0005
            pipe --diameter "8 in" --slope "0.5%" --n 0.013 | velocity | ft/s | 2.448 | 0.0005
            pipe --diameter "8 in" --slope "0.005 ft/ft" --n 0.013 | flow | gpm | 383.52 | 0.05
            # W-02, open civil engineering problem: D 0.5 ft, S 5%, n 0.02
            pipe --diameter "0.5 ft" --slope 5% --n 0.02 | flow | cfs | 0.82 | 0.005
            # published trap list: 4 in at 1/8 in/ft, k 1.486, n 0.009 126, 0.011 103, 0.013 87, 0.015 76 gpm
            pipe --diameter "4 in" --slope "1/8 in/ft" --n 0.009 | flow | gpm | 126 | 0.5
            pipe --diameter "4 in" --slope "1/8 in/ft" --n 0.011 | flow | gpm | 103 | 0.5
            pipe --diameter "4 in" --slope "1/8 in/ft" --n 0.013 | flow | gpm | 87 | 0.5
            pipe --diameter "4 in" --slope "1/8 in/ft" --n 0.015 | flow | gpm | 76 | 0.5
            # Manning (H-01) worked out by hand, and the sizes of ASTM F667 (M-02)
            pipe --flow "60 gpm" --slope 1% --n 0.011 | inside diameter | in | 3.291 | 0.0005
            pipe --flow "60 gpm" --slope 1% --n 0.011 | next size | in | 4 | 0
            # ASTM D3034 SDR 35 (M-05): 4.215 - 2 × 4.215 / 35 = 3.974 in inside; n 0.010 (H-02)
            pipe --flow "60 gpm" --slope 1% --kind "solid PVC main SDR 35" | next size | in | 4 | 0
            pipe --flow "120 gpm" --slope 1% --kind MAIN-4 | next size | in | 6 | 0
            pipe --slope 1% --kind MAIN-4 | flow | gpm | 109.2 | 0.05
            pipe --diameter "4 in" --slope 1% --kind "Solid PVC main SDR 35" | flow | gpm | 109.2 | 0.05
            # W-12, International Plumbing Code 2012 factor
            roof --area "2506 sf" --rain "3 in/h" | roof water | gpm | 78.2 | 0.05
            roof --flow "115 gpm" --rain "3 in/h" | roof area | sf | 3685.9 | 0.05
            # H-20, UPC Table 11-2: 21,400 sf at 1 in/h, 222.6 gpm
            roof --area "21,400 sf" --rain "1 in/h" | roof water | gpm | 222.56 | 0.05
            # W-06, NC State University stormwater workshop, Asheville 10-year 5-minute rain
            runoff --area "5 acre" --c 0.62 --rain "6.96 in/h" | runoff | cfs | 21.576 | 0.0005
            # W-08, hydrology textbook problem
            runoff --area "0.20 mi2" --c 0.4 --rain "2.87 in/h" | runoff | cfs | 146.944 | 0.0005
            # trade arithmetic: 60 ft long, 5 ft deep, 3 ft wide, by slope of 29 CFR 1926 Subpart P App. B Table B-1 (T-09)
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --side 0 | soil dug | cy | 33.3 | 0.05
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --side 0.75 | soil dug | cy | 54.2 | 0.05
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --side 1 | soil dug | cy | 61.1 | 0.05
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --soil B | soil dug | cy | 61.1 | 0.05
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --soil C | soil dug | cy | 75.0 | 0.05
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --soil unknown | soil dug | cy | 75.0 | 0.05
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --soil B | top width | ft | 8 | 1e-9
            # soil beside a foundation was dug before: never Type A, at best B (T-02, T-04)
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --soil A | lawful slope | ft/ft | 1 | 0
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --soil C | lawful slope | ft/ft | 1.5 | 0
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --soil unknown | lawful slope | ft/ft | 1.5 | 0
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --side 2 | lawful slope | ft/ft | 1.5 | 0
            # 29 CFR 1926.652(a)(1) (T-13)
            trench --length "60 ft" --depth "3 ft" --bottom "3 ft" --soil B | protection is required from | ft | 5 | 0
            # W-01, Subpart P App. B worked set-back: Type B, 10 ft deep
            trench --length "60 ft" --depth "10 ft" --bottom "3 ft" --soil B | top edge lies back | ft | 10 | 0
            # W-25, published excavation example: 200 × 20 × 2 ft
            trench --length "200 ft" --depth "2 ft" --bottom "20 ft" --side 0 | soil dug | cy | 296.3 | 0.05
            # depth 4 to 6 ft: the prismoid, not the average of the ends (62.2)
            trench --length "60 ft" --depth "4 ft" --depth-end "6 ft" --bottom "3 ft" --side 1 | soil dug | cy | 61.48 | 0.005
            # square-cut corner 161.7 cf (B²H + BsH² + s²H³/3) more or less than 1650 cf
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --side 1 --corners-out 1 | soil dug | cy | 67.10 | 0.005
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --side 1 --corners-in 1 | soil dug | cy | 55.12 | 0.005
            # footing 8 in thick and 6 in wide: 60 × (0.5 × 5 + 3 × 5.6667 + 5.6667² / 2) / 27
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --side 1 --footing "8 in" --projection "6 in" | soil dug | cy | 79.012 | 0.0005
            # W-29, state DOT construction memo, section 109: 958.5 cy × 1.406
            stone --length "958.5 ft" --bottom "9 ft" --height "3 ft" --density "1.406 ton/cy" | weight | ton | 1347.65 | 0.005
            # W-27, same memo, Ex. I: 2,741,283 lb at 0.712 cy a ton (1.404494 ton/cy)
            stone --tons "2,741,283 lb" --bottom "3 ft" --height "1 ft" --density "1.4044944 ton/cy" | stone | cy | 975.9 | 0.05
            # pipe taken out of the stone: (2 × 1.1667 - π × 0.35125² / 4) × 60 / 27
            stone --length "60 ft" --bottom "2 ft" --height "14 in" --pipe "4.215 in" | stone | cy | 4.96985 | 0.00005
            # E-12: 100 lb/cf is 1.35 ton/cy
            stone --length "27 ft" --bottom "1 ft" --height "1 ft" --density "100 lb/cf" | weight | ton | 1.35 | 1e-9
            # W-31, published wet-film coverage
            coating --wet "10 mil" | coverage | sf/gal | 160.417 | 0.0005
            # W-32, coating technical bulletin, 35% solids
            coating --dry "1 mil" --solids 35% | coverage | sf/gal | 561 | 0.5
            coating --dry "2 mil" --solids 35% | coverage | sf/gal | 281 | 0.5
            coating --area "100 sf" --wet "60 mil" | coating | gal | 3.7403 | 0.00005
            coating --dry "40 mil" --solids 60% | wet film | mil | 66.667 | 0.0005
            coating --dry "40 mil" --solids 60% | coverage | sf/gal | 24.0625 | 0.00005
            # W-21, construction estimating textbook, Ex. 9-2
            earth --bank "1000 cy" --swell 30% --truck "7 cy" | soil, loose | cy | 1300 | 1e-9
            earth --bank "1000 cy" --swell 30% --truck "7 cy" | truck loads | load | 186 | 0
            # W-24, earthwork textbook problem: one ton at 3,400 and 2,700 lb/cy
            earth --bank "0.588235 cy" --loose "0.740741 cy" | swell | % | 25.9 | 0.05
            # W-25: 296.3 bank cy, 40% swell
            earth --bank "296.3 cy" --swell 40% | soil, loose | cy | 414.8 | 0.05
            # E-08 with 5% shrink: 500 / 0.95, then × 1.3
            earth --compacted "500 cy" --shrink 5% --swell 30% | soil, bank | cy | 526.316 | 0.0005
            earth --compacted "500 cy" --shrink 5% --swell 30% | soil, loose | cy | 684.211 | 0.0005
            # W-14, Hazen-Williams friction chart, 1 in Schedule 40 steel
            friction --flow "10 gpm" --id "1.049 in" --c 100 --length "100 ft" | head | ft | 11.63 | 0.005
            friction --flow "10 gpm" --id "1.049 in" --c 100 --length "100 ft" | pressure | psi | 5.04 | 0.005
            friction --flow "10 gpm" --id "1.049 in" --c 100 --length "100 ft" | velocity | ft/s | 3.71 | 0.005
            friction --flow "30 gpm" --id "1.049 in" --c 100 --length "100 ft" | head | ft | 88.97 | 0.005
            # W-17, published sump sizing rule: 25 gpm in, factor 1.5, 2,250 gph out
            sump --inflow "25 gpm" --pit "18 in" --lift "9 ft" --pipe "1.5 in" --length "40 ft" | what the pump | gpm | 37.5 | 1e-9
            sump --inflow "1500 gph" --pit "18 in" --lift "9 ft" --pipe "1.5 in" --length "40 ft" | what the pump | gpm | 37.5 | 1e-9
            # H-37, UFC 3-240-04A Table 7-1: t × Q / 4
            sump --inflow "25 gpm" --pit "18 in" --lift "9 ft" --pipe "1.5 in" --length "40 ft" | storage for a cycle | gal | 93.75 | 1e-9
            # H-40: 1.10 gal an inch in an 18 in pit; half of 24 in deep
            sump --inflow "25 gpm" --pit "18 in" --lift "9 ft" --pipe "1.5 in" --length "40 ft" | storage between | gal | 13.22 | 0.005
            # H-39: T = 4 V / Qp at the worst inflow
            sump --inflow "25 gpm" --pit "18 in" --lift "9 ft" --pipe "1.5 in" --length "40 ft" | shortest cycle | min | 1.410 | 0.0005
            # H-34, H-41: 9 + 78 ft of 1.61 in plastic at 37.5 gpm
            sump --inflow "25 gpm" --pit "18 in" --lift "9 ft" --pipe "1.5 in" --length "40 ft" | total head | ft | 15.158 | 0.0005
            # W-35 City of Edina MN; R-01 Vancouver WA 20.170.100; R-02 NC State Extension
            roots --trunk "10 in" | root zone by R-03 | ft | 15 | 1e-9
            roots --trunk "20 in" | root zone by R-03 | ft | 30 | 1e-9
            roots --trunk "12 in" | root zone by R-01 | ft | 12 | 1e-9
            roots --trunk "12 in" | root zone by R-02 | ft | 15 | 1e-9
            roots --trunk "12 in" | root zone by R-03 | ft | 18 | 1e-9
            # W-37, urban forestry guide: circumference 36 in
            roots --girth "36 in" | trunk | in | 11.46 | 0.005
            """)
    void figureIsThePublishedOne(String line, String name, String unit, double expected, double tolerance)
            throws IOException {
        assertThat(answer(line, name, unit)).isCloseTo(expected, within(tolerance));
    }

    /** W-14 complete: the published chart of 1 in Schedule 40 steel, C 100, ft lost in 100 ft. */
    @ParameterizedTest(name = "{0} gpm: {1} ft")
    @CsvSource({
        "2, 0.59",
        "4, 2.13",
        "6, 4.52",
        "8, 7.69",
        "10, 11.63",
        "12, 16.30",
        "15, 24.64",
        "18, 34.54",
        "20, 41.99",
        "25, 63.47",
        "30, 88.97"
    })
    void frictionChart(int gpm, double feet) throws IOException {
        assertThat(answer(
                        "friction --flow \"" + gpm + " gpm\" --id \"1.049 in\" --c 100 --length \"100 ft\"",
                        "head",
                        "ft"))
                .isCloseTo(feet, within(0.005));
    }

    @Test
    void jsonHasAnswersAndWorkingAndNothingElse() throws IOException {
        figure("coating --dry \"40 mil\" --solids 60% --json");
        JsonNode root = new ObjectMapper().readTree(out.toString());
        assertThat(root.fieldNames()).toIterable().containsExactly("answers", "working");
        assertThat(root.get("answers")).hasSize(2).allSatisfy(answer -> {
            assertThat(answer.fieldNames()).toIterable().containsExactly("name", "value", "unit");
            assertThat(answer.get("name").isTextual()).isTrue();
            assertThat(answer.get("value").isNumber()).isTrue();
            assertThat(answer.get("unit").asText()).isNotEmpty();
        });
        assertThat(root.get("working")).isNotEmpty().allMatch(JsonNode::isTextual);
        assertThat(root.get("working").toString()).contains("wet = dry ÷ vs = 40 ÷ 0.6 = 66.6667 mil");
    }

    /** 40 ÷ 0.6 has no end; the program for other programs keeps every digit that it has. */
    @Test
    void jsonIsNotRounded() throws IOException {
        assertThat(answer("coating --dry \"40 mil\" --solids 60%", "wet film", "mil"))
                .isEqualTo(40 / 0.6);
    }

    @Test
    void textIsRoundedForReadingAndShowsTheWorking() {
        assertThat(figure("pipe --diameter \"8 in\" --slope 0.5% --n 0.013")).isZero();
        assertThat(out.toString().lines())
                .contains("flow, full  0.8545 cfs", "velocity    2.448 ft/s", "Working:")
                .anySatisfy(line -> assertThat(line).contains("V = k ÷ n × R^(2 ÷ 3) × S^(1 ÷ 2) =", "Manning"));
    }

    @Test
    void allThreeOfAPipeGiveTheShareUsed() throws IOException {
        assertThat(answer("pipe --diameter \"8 in\" --slope 0.5% --n 0.013 --flow \"191.76 gpm\"", "share", "%"))
                .isCloseTo(50, within(0.01));
    }

    @ParameterizedTest(name = "{0} → {1} {3}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # line | answer | unit | value as text
            # Md. Com. Law 14-302.1: five business days, seven from 65; the nine holidays of 14-301(b)
            cancel --signed 2026-07-01 --state MD --age 64 | last day to cancel | ~~ | 2026-07-08
            cancel --signed 2026-07-01 --state MD --age 65 | last day to cancel | ~~ | 2026-07-10
            cancel --signed 2026-07-01 --state MD | last day to cancel | ~~ | 2026-07-10
            # 16 CFR 429.0(f), leaving out the day on which Independence Day is observed
            cancel --signed 2026-07-01 --state MD --age 65 | last day by the rule of US-FTC | ~~ | 2026-07-07
            cancel --signed 2026-07-01 --state MD --age 65 | last day by the rule of MD | ~~ | 2026-07-10
            cancel --signed 2026-07-01 --state WY | last day to cancel | ~~ | 2026-07-07
            # N.J.S.A. 56:8-151: after receiving a copy
            cancel --signed 2026-07-01 --state NJ --received 2026-07-08 | last day to cancel | ~~ | 2026-07-13
            cancel --signed 2026-07-01 --state NJ --received 2026-07-08 | last day by the rule of US-FTC | ~~ | 2026-07-07
            # Md. Bus. Reg. 8-617: one third; 4999.9966 is cut
            deposit --price 14999.99 --state MD | most at signing | $ | 4999.99
            deposit --price "$14,999.99" --state MD | most at signing | $ | 4999.99
            # M.G.L. c. 142A s. 2: the greater of the two
            deposit --price 9000 --state MA --special-order 2000 | most at signing | $ | 3000.00
            deposit --price 9000 --state MA --special-order 4000 | most at signing | $ | 4000.00
            # 489.126: a duty above a tenth, no limit
            deposit --price 14999.99 --state FL | most at signing | $ | null
            deposit --price 14999.99 --state FL | duties begin above | $ | 1499.99
            deposit --price 14999.99 --state NY | most at signing | $ | null
            deposit --price 14999.99 --state WY | most at signing | $ | null
            term --completed 2028-02-29 --years 15 | last day of the term | ~~ | 2043-02-28
            term --completed 2026-09-25 --years 10 | last day of the term | ~~ | 2036-09-24
            # Streamlined Sales and Use Tax Agreement s. 324
            tax --amount 100.50 --rate 7% | sales tax | $ | 7.04
            tax --amount 100.50 --rate 7% | amount with tax | $ | 107.54
            tax --amount "$1,000.07" --rate 7% | sales tax | $ | 70.00
            """)
    void daysAndMoneyAreTextForOtherPrograms(String line, String name, String unit, String value) throws IOException {
        assertThat(answers(line)).anySatisfy(answer -> {
            assertThat(answer.get("name").asText()).isEqualTo(name);
            assertThat(answer.get("unit").asText()).isEqualTo(unit);
            assertThat(answer.get("value").asText()).isEqualTo(value);
            assertThat(answer.get("value").isTextual() || answer.get("value").isNull())
                    .isTrue();
        });
    }

    @ParameterizedTest(name = "{0} says {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # line | what must be said
            cancel --signed 2026-07-01 --state MD --age 65 | US-FTC: 3 business days after 2026-07-01
            cancel --signed 2026-07-01 --state MD --age 65 | 16 CFR 429.0(f), 429.1; read]
            cancel --signed 2026-07-01 --state MD --age 65 | MD: 7 business days after 2026-07-01, every day but Sundays and Maryland's nine holidays
            cancel --signed 2026-07-01 --state MD --age 65 | excerpt read: not verified, ask counsel]
            cancel --signed 2026-07-01 --state MD | MUST cancel-age-unknown
            cancel --signed 2026-07-01 --state WY | MUST cancel-state-unread: The cancellation rules of WY were not checked.
            cancel --signed 2026-07-01 --state OH | ADVISE cancel-count-unread
            cancel --signed 2026-07-01 --state OH | from memory: not verified, ask counsel]
            cancel --signed 2026-07-01 --state NJ | MUST cancel-from-receipt: In NJ the days start when the buyer receives
            cancel --signed 2026-07-01 --state NJ --received 2026-07-08 | NJ: 3 business days after 2026-07-08
            deposit --price 14999.99 --state MD | MD: 1/3 of $14,999.99, rounded down to the cent = $4,999.99
            deposit --price 14999.99 --state CA | lesser of $1,000.00 and 1/10 of $14,999.99
            deposit --price 14999.99 --state FL | FL: no limit, duties above 1/10 of $14,999.99 = $1,499.99
            deposit --price 30000 --state OH --special-order 2000 | 1/10 of $30,000.00, rounded down to the cent, plus special order $2,000.00
            deposit --price 14999.99 --state FL | MUST deposit-duty-above: Taking more than $1,499.99 at signing brings duties
            deposit --price 14999.99 --state NY | MUST deposit-escrow
            deposit --price 14999.99 --state VA | ADVISE deposit-no-limit-found
            deposit --price 14999.99 --state OH | ADVISE deposit-no-limit-found
            deposit --price 14999.99 --state WY | MUST state-unread
            deposit --price 14999.99 --state PA | secondary source: not verified, ask counsel]
            term --completed 2028-02-29 --years 15 | common practice, no source
            tax --amount 100.50 --rate 7% | $100.50 × 7% = 7.035, rounded once
            tax --amount 100.50 --rate 7% | MUST tax-mode
            """)
    void matterOfLawNamesItsRulesAndEndsWithWhoDecides(String line, String said) {
        assertThat(figure(line)).as(err.toString()).isZero();
        assertThat(out.toString()).contains(said);
        assertThat(out.toString().strip())
                .endsWith("Not legal advice. Local law, the licensing board and licensed counsel control.");
    }

    @Test
    void noLimitFoundIsToldInWords() {
        assertThat(figure("deposit --price 14999.99 --state VA")).isZero();
        assertThat(out.toString().lines().findFirst().orElseThrow()).isEqualTo("most at signing  no limit found");
    }

    @Test
    void flowThatNoSizeCarriesSaysSo() {
        assertThat(figure("pipe --flow \"2000 gpm\" --slope 0.5% --kind \"Solid PVC main SDR 35\""))
                .isZero();
        assertThat(out.toString())
                .contains("No size of Solid PVC main SDR 35 carries it", "largest that is sold is 6 in");
    }

    @ParameterizedTest(name = "{0} says {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # depth and bank | what must be said | and with what citation
            --depth "5 ft" --soil B | MUST slope-back | Table B-1
            --depth "5 ft" --side 0 | STOP upright-too-deep | 29 CFR 1926.652(a)(1)
            --depth "4 ft 11 in" --side 0 | MUST upright-shallow | 29 CFR 1926.652(a)(1)
            --depth "4 ft 11 in" --side 0 | competent person looks and finds no sign | 29 CFR 1926.652(a)(1)
            --depth "5 ft" --side 1 | STOP bank-too-steep | 1926.652(b)(1)
            --depth "4 ft" --side 1 | MUST bank-too-steep | 1926.652(b)(1)
            --depth "5 ft" --side 1.5 | MUST slope-back | Table B-1
            --depth "5 ft" --side 1.5 | MUST soil-not-named | App. A
            --depth "5 ft" --soil unknown | MUST soil-not-classed | 29 CFR 1926.652(b)(1)
            --depth "5 ft" --soil A | STOP soil-type-a | App. A
            --depth "5 ft" --soil rock | STOP soil-rock-beside-footing | App. A
            --depth "5 ft" --soil B | MUST seepage-unknown | App. A
            --depth "4 ft" --soil B | MUST ladder | 1926.651(c)(2)
            --depth "4 ft 1 in" --soil B | ADVISE air-test | 1926.651(g)(1)
            --depth "21 ft" --soil B | STOP trench-over-20 | 29 CFR 1926.652(b)(4)
            --depth "4 ft 6 in" --footing "8 in" --side 0 | STOP upright-too-deep | 29 CFR 1926.652(a)(1)
            """)
    void trenchNeverGivesAnAllClear(String line, String said, String cited) {
        assertThat(figure("trench --length \"60 ft\" --bottom \"3 ft\" " + line))
                .isZero();
        assertThat(out.toString().lines()).anySatisfy(found -> assertThat(found).contains(said, cited));
        assertThat(out.toString())
                .contains(
                        "competent person on site have the last word",
                        "MUST daily-inspection",
                        "MUST spoil-back",
                        "MUST not-below-footing",
                        "ADVISE state-plan");
    }

    @Test
    void jsonOfATrenchCarriesWhatMustBeSaid() throws IOException {
        figure("trench --length \"60 ft\" --bottom \"3 ft\" --depth \"5 ft\" --side 0 --json");
        List<String> working = new ArrayList<>();
        new ObjectMapper().readTree(out.toString()).get("working").forEach(line -> working.add(line.asText()));
        assertThat(working).anyMatch(line -> line.startsWith("STOP upright-too-deep: "));
        assertThat(working.get(working.size() - 1)).startsWith("Local code, the licensed professional");
    }

    /** Deeper than 20 ft an engineer designs the protection, and the table of slopes no longer holds (T-09, T-14). */
    @Test
    void deeperThanTheTableThereIsNoLawfulSlope() {
        figure("trench --length \"60 ft\" --bottom \"3 ft\" --depth \"21 ft\" --soil B");
        assertThat(out.toString()).doesNotContain("lawful slope");
    }

    @ParameterizedTest(name = "{0} says {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # sump | what must be said
            --inflow "25 gpm" --pit "18 in" | MUST sump: Outlet as figured is a sump.
            --inflow "25 gpm" --pit "18 in" | ADVISE sump-cycle
            --inflow "25 gpm" --pit "17 in" | MUST sump-basin-small
            --inflow "25 gpm" --pit "18 in" --depth "23 in" | MUST sump-basin-small
            --inflow "25 gpm" --pit "18 in" --pump "25 gpm" | MUST pump-below-inflow
            """)
    void sumpSaysWhatItAsksFor(String line, String said) {
        assertThat(figure("sump --lift \"9 ft\" --pipe \"2 in\" --length \"40 ft\" " + line))
                .isZero();
        assertThat(out.toString()).contains(said, "MUST never-sanitary", "have the last word");
    }

    @Test
    void sumpThatHoldsTheRulesIsNotFaulted() {
        figure("sump --inflow \"1 gpm\" --pit \"18 in\" --depth \"24 in\" --lift \"9 ft\" --pipe \"2 in\" --length"
                + " \"9 ft\"");
        assertThat(out.toString()).doesNotContain("sump-basin-small", "pump-below-inflow", "sump-cycle");
    }

    @Test
    void rootsNameEachRuleAndTheRange() {
        assertThat(figure("roots --trunk \"12 in\"")).isZero();
        assertThat(out.toString())
                .contains(
                        "R-01, Vancouver WA 20.170.100",
                        "R-02, NC State Extension",
                        "R-03, City of Edina MN",
                        "Published rules differ: 12 to 18 ft");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # line | found | allowed | fix
            pipe --diameter 8 --slope 0.5% --n 0.013 | --diameter: found "8" | a length with its unit | as "8 ft"
            pipe --diameter "8 in" --slope 0.5 --n 0.013 | --slope: found "0.5" | %, in/ft, ft/ft | write it as "1%"
            pipe --diameter "8 in" --slope 0% --n 0.013 | --slope: found "0%" | above 0 | "0.5%"
            pipe --diameter "8 in" --slope 0.5% --n 13 | --n: found "13" | 0.005 to 0.2 | "0.013"
            pipe --diameter "8 in" --slope 0.5% | neither --n nor --kind | either of them | --n 0.013
            pipe --diameter "8 in" --slope 0.5% --n 0.013 --kind MAIN-4 | both --n and --kind | either of them | leave one out
            pipe --diameter "8 in" --n 0.013 | found --diameter | all but one of --diameter, --slope, --flow | give 1 of --slope, --flow
            pipe --slope 1% --flow "60 gpm" --kind hose | --kind: found "hose" | Solid PVC main SDR 35 | write one of them
            roof --area "2506 sf" | found --area | all but one of --area, --rain, --flow | give 1 of --rain, --flow
            roof --area "2506 sf" --rain "3 in/h" --flow "9 gpm" | found --area, --rain, --flow | the one left out | leave out
            roof --area "2506 ft" --rain "3 in/h" | --area: found "2506 ft" | sf, sy, m2, acre | write it as
            roof --area "0 sf" --rain "3 in/h" | --area: found "0 sf" | above 0 | "1600 sf"
            runoff --area "5 acre" --c 62 --rain "6.96 in/h" | --c: found "62" | 0.01 to 1 | "0.62"
            runoff --area "1 acre" --rain "1 in/h" --flow "900 gpm" | more water than the rain brings | C at most 1 | check --area
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" | neither --soil nor --side | one of them | --soil unknown
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --soil B --side 1 | both --soil and --side | one of them | leave one out
            trench --length "60 ft" --depth "5 ft" --soil B | --bottom: found nothing | a length with its unit | add --bottom "3 ft"
            trench --length "60 ft" --depth "-5 ft" --bottom "3 ft" --soil B | --depth: found "-5 ft" | above 0 | "5 ft"
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --soil D | --soil: found "D" | A, B, C, rock, unknown | "unknown"
            trench --length "60 ft" --depth "5 ft" --bottom "3 ft" --soil B --corners-in 1.5 | --corners-in: found "1.5" | a whole number | "2"
            stone --bottom "2 ft" --height "1 ft" | none of them | all but one of --length, --tons | give 1 of
            stone --length "9 ft" --bottom "2 ft" --height "4 in" --pipe "4 in" | a pipe as large as the stone | lies in the stone | check --pipe
            coating --area "100 sf" | nothing that fixes the wet film | --dry with --solids | give --wet
            coating --wet "60 mil" --dry "40 mil" --solids 60% | the wet film fixed twice | --dry with --solids | leave one
            coating --dry "40 mil" --solids 0% | --solids: found "0%" | above 0 and at most 100% | "60%"
            coating --dry "40 mil" --wet "30 mil" | a dry film thicker than the wet one | at most as thick | check --dry
            earth --bank "1000 cy" | too little to work with | --loose with --swell | --bank "1000 cy" --swell 30%
            earth --bank "10 cy" --loose "13 cy" --swell 30% | the bank volume fixed twice | a second volume | leave one
            earth --compacted "500 cy" --shrink 100% | --shrink: found "100%" | 0 to under 100% | "5%"
            friction --flow "10 gpm" --id "1.049 in" | found --flow, --id | all but one of --flow, --id, --length, --head | give 1 of
            sump --inflow "0 gpm" --pit "18 in" --lift "9 ft" --pipe "2 in" --length "9 ft" | --inflow: found "0 gpm" | above 0 | "30 gpm"
            sump --inflow "9 gpm" --pit "18 in" --lift "9 ft" --pipe "4 in" --length "9 ft" | --pipe: found "4 in" | 1 to 2.1 in | "1.5 in"
            roots | no trunk | one of --trunk, --girth, --radius | give --trunk "12 in"
            roots --trunk "12 in" --girth "36 in" | more than one of them | one of --trunk | leave all but one out
            roots --trunk twelve | --trunk: found "twelve" | a length with its unit | write it as
            cancel --signed 2026-02-30 --state MD | --signed: found "2026-02-30" | year-month-day | a day of the calendar
            cancel --signed 07/01/2026 --state MD | --signed: found "07/01/2026" | year-month-day | "2026-07-01"
            cancel --signed 2026-07-01 | --state: found nothing | two letters | add --state "MD"
            cancel --signed 2026-07-01 --state Maryland | --state: found "Maryland" | two letters | write "MD"
            cancel --signed 2026-07-01 --state ZZ | --state: found "ZZ" | one of the 50 states, or DC | as "OH"
            cancel --signed 2026-07-01 --state MD --age 17 | --age: found "17" | 18 to 120 | "65"
            cancel --signed 2026-07-01 --state MD --age old | --age: found "old" | a whole number, 18 to 120 | "65"
            cancel --signed 2026-07-02 --state NJ --received 2026-07-01 | received on 2026-07-01, before signing | on or after | --received
            deposit --price 14999.999 --state MD | --price: found "14999.999" | at most two decimals | "$14,999.99"
            deposit --price 0 --state MD | --price: found "0" | above 0 | "$14,999.99"
            deposit --price 9000 --state MA --special-order -5 | --special-order: found "-5" | at most two decimals | "14999.99"
            term --completed 2028-02-29 --years 0 | --years: found "0" | 1 to 99 | "15"
            tax --amount 100.50 --rate 7 | --rate: found "7" | % | write it as
            tax --amount 100.50 --rate 31% | --rate: found "31%" | 0 to 30% | "7%"
            trench --dpth "5 ft" | figure trench: found "--dpth" | --depth | see spadework figure trench --help
            trench --depth | found --depth without a value | --depth and its value | Depth at the start
            roof --area "5 sf" --area "6 sf" | found --area twice | once | leave one of them out
            roof 2506 | figure roof: found "2506" | --area | put a value with a space in quotes
            pipes | figure: found "pipes" | pipe, roof, runoff | write pipe
            """)
    void wrongLineGetsOneClearMessage(String line, String found, String allowed, String fix) {
        assertThat(figure(line)).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString().lines()).hasSize(1);
        assertThat(err.toString()).contains(found).doesNotContain("\tat ", "Exception");
        assertThat(err.toString().split("; allowed: ")[1]).contains(allowed).contains("; fix: ");
        assertThat(err.toString().split("; fix: ")[1]).contains(fix);
    }

    @Test
    void everyFaultOfALineIsToldAtOnce() {
        assertThat(figure("trench --length 60 --depth \"5 ft\" --soil D")).isEqualTo(2);
        assertThat(err.toString().lines())
                .hasSize(3)
                .anyMatch(line -> line.startsWith("--length: "))
                .anyMatch(line -> line.startsWith("--bottom: "))
                .anyMatch(line -> line.startsWith("--soil: "));
    }

    @Test
    void noCalculatorGetsTheListOfThem() {
        assertThat(figure("")).isEqualTo(2);
        assertThat(err.toString())
                .contains("pipe, roof, runoff, trench, stone, coating, earth, sump, friction, roots, cancel,"
                        + " deposit, term, tax")
                .doesNotContain("\tat ");
    }

    @ParameterizedTest(name = "{0} --help")
    @MethodSource("calculators")
    void helpNamesUnitsAndShowsExamplesThatRun(String name, CommandLine calculator) {
        assertThat(figure(name + " --help")).isZero();
        assertThat(out.toString())
                .contains("Example:", "spadework figure " + name)
                .containsAnyOf("with its unit", "year-month-day, as", ", as 14999.99", ", as 100.50");
        List<String> examples = Arrays.stream(
                        calculator.getCommandSpec().usageMessage().footer())
                .map(line -> line.replace("%%", "%").strip().replaceFirst("^spadework figure ", ""))
                .toList();
        assertThat(examples).isNotEmpty().allSatisfy(line -> {
            out.getBuffer().setLength(0);
            assertThat(figure(line)).as(err.toString()).isZero();
            assertThat(out.toString()).contains("Working:");
        });
    }

    static Stream<Arguments> calculators() {
        return new CommandLine(new Spadework())
                .getSubcommands().get("figure").getSubcommands().entrySet().stream()
                        .map(entry -> Arguments.of(entry.getKey(), entry.getValue()));
    }
}
