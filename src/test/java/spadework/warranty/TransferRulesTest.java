// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;

/** The warranty of the fixture may pass on twice, with notice within 60 days of the sale; it ends on April 2, 2041. */
class TransferRulesTest {
    private static final Warranty WARRANTY = Warranties.of("2026-014-W1");

    @ParameterizedTest(name = "sold {1}, notice {0}, waived {2}: {3}")
    @CsvSource(textBlock = """
        2029-07-19, 2029-05-20,                , ''
        2029-05-20, 2029-05-20,                , ''
        2029-07-20, 2029-05-20,                , '61 days after the sale'
        2029-07-20, 2029-05-20, owner was abroad, ''
        2029-05-19, 2029-05-20,                , 'after the notice'
        2029-05-19, 2029-05-20, owner was abroad, 'after the notice'
        2041-04-02,           ,                , ''
        2041-04-03,           ,                , 'after the last part ended on 2041-04-02'
        """)
    void noticeHoldsToTheTerms(LocalDate on, LocalDate sold, String waived, String refused) {
        String found =
                TransferRules.faults(WARRANTY, on, Optional.ofNullable(sold), Optional.ofNullable(waived)).stream()
                        .map(fault -> fault.found())
                        .collect(Collectors.joining(" | "));
        assertThat(found).contains(refused);
        assertThat(found.isEmpty()).isEqualTo(refused.isEmpty());
    }

    @Test
    void warrantyPassesOnAsOftenAsItSaysAndNamesTheFirstCertificate() {
        LocalDate on = LocalDate.of(2029, 6, 1);
        Warranty second = WARRANTY.reissued("2026-014-W2", List.of("Anselm Wren"));
        Warranty third = second.reissued("2026-014-W3", List.of("Perpetua Holm"));
        assertThat(TransferRules.faults(second, on, Optional.of(on), Optional.empty()))
                .isEmpty();
        assertThat(third.reissueOf()).contains("2026-014-W1");
        assertThat(third.terms().transfers()).isZero();
        assertThat(third.coverage().parts())
                .as("a transfer prolongs nothing")
                .isEqualTo(WARRANTY.coverage().parts());
        assertThat(TransferRules.faults(third, on, Optional.of(on), Optional.empty()))
                .singleElement()
                .extracting("found")
                .isEqualTo("no transfer left");
        assertThatThrownBy(() -> third.reissued("2026-014-W4", List.of("Nobody")))
                .hasMessage("2026-014-W3 may not pass to a later owner");
    }

    @Test
    void unknownSaleIsToldBecauseTheNoticeWasNotChecked() {
        assertThat(TransferRules.findings(WARRANTY, Optional.empty()))
                .extracting(Finding::id)
                .containsExactly("transfer-sale-unknown");
        assertThat(TransferRules.findings(WARRANTY, Optional.of(LocalDate.of(2029, 6, 1))))
                .isEmpty();
    }
}
