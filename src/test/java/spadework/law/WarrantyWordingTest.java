package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.finding.Severity;

/** 15 USC 2308: implied warranties are not disclaimed; 16 CFR 239.4: a lifetime says whose. */
class WarrantyWordingTest {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            This warranty is in lieu of all other warranties, express or implied. | implied-disclaimed
            THIS IS IN LIEU OF ANY OTHER WARRANTY. | implied-disclaimed
            In place of every other guarantee we give this. | implied-disclaimed
            The pump is sold as is. | implied-disclaimed
            Materials are provided on an "as-is" basis. | implied-disclaimed
            AS IS, with all faults | implied-disclaimed
            There is no warranty of merchantability. | implied-disclaimed
            No implied warranty is given. | implied-disclaimed
            We make no express or implied warranties. | implied-disclaimed
            No other warranties apply. | implied-disclaimed
            We disclaim all implied warranties. | implied-disclaimed
            Implied warranties are excluded. | implied-disclaimed
            Merchantability and fitness for a particular purpose are disclaimed. | implied-disclaimed
            This does not include fitness for any particular purpose. | implied-disclaimed
            The buyer waives any and all warranties. | implied-disclaimed
            This is the sole and exclusive warranty. | implied-disclaimed
            Without warranty of any kind. | implied-disclaimed
            Lifetime warranty on the walls | lifetime-bare
            A life-time guarantee. | lifetime-bare
            Good for a life time. | lifetime-bare
            We warrant the drain. The warranty holds for life. | lifetime-bare
            """)
    void forbiddenWordingIsAStopThatNamesTheText(String text, String id) {
        assertThat(WarrantyWording.of(Map.of("terms 3", text))).singleElement().satisfies(finding -> {
            assertThat(finding.id()).isEqualTo(id);
            assertThat(finding.severity()).isEqualTo(Severity.STOP);
            assertThat(finding.about()).isEqualTo("terms 3");
            assertThat(text).contains(finding.values().get("words"));
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "Lifetime warranty: as long as the first owner owns the house.",
        "A warranty for the lifetime of the house.",
        "Warranted for the original owner's lifetime.",
        "Lifetime means 40 years.",
        "For the life of the pump the maker stands by it.",
        "The old pipe is left as is.",
        "Fill the trench as is usual in clay.",
        "Implied warranties last as long as this warranty does.",
        "We repair or replace a covered part. You pay nothing.",
        "No work is done without a signed paper. The warranty starts on the day of completion."
    })
    void ordinaryWordingPasses(String text) {
        assertThat(WarrantyWording.of(Map.of("terms 1", text))).isEmpty();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            Implied warranties are limited to the term above. | true
            This warranty lasts ten years. | false
            """)
    void limitOfImpliedWarrantiesIsSeen(String text, boolean limits) {
        assertThat(WarrantyWording.limitsImplied(text)).isEqualTo(limits);
    }
}
