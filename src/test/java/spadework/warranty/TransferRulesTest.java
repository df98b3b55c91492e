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
        2026-04-20, 2026-03-31,                , 'before the warranty began'
        2041-04-02,           ,                , 'no day of the sale'
        2041-04-02, 2041-04-01,                , ''
        2041-04-03, 2041-04-01,                , 'after the last part ended on 2041-04-02'
        """)
    void noticeHoldsToTheTerms(LocalDate on, LocalDate sold, String waived, String refused) {
        String found = TransferRules.faults(
                        WARRANTY,
                        on,
                        new Handover(Optional.ofNullable(sold), Optional.ofNullable(waived), Optional.empty()))
                .stream()
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
        assertThat(TransferRules.faults(second, on, new Handover(Optional.of(on), Optional.empty(), Optional.empty())))
                .isEmpty();
        assertThat(third.reissueOf()).contains("2026-014-W1");
        assertThat(third.terms().transfers()).isZero();
        assertThat(third.coverage().parts())
                .as("a transfer prolongs nothing")
                .isEqualTo(WARRANTY.coverage().parts());
        assertThat(TransferRules.faults(third, on, new Handover(Optional.of(on), Optional.empty(), Optional.empty())))
                .singleElement()
                .extracting("found")
                .isEqualTo("no transfer left");
        assertThatThrownBy(() -> third.reissued("2026-014-W4", List.of("Nobody")))
                .hasMessage("2026-014-W3 may not pass to a later owner");
    }

    /** Whoever inherits the house, or keeps it in a divorce, uses no transfer up and has no day of sale. */
    @Test
    void inheritanceAndDivorceAreNoTransfer() {
        LocalDate on = LocalDate.of(2029, 6, 1);
        Warranty last = WARRANTY.reissued("W2", List.of("A")).reissued("W3", List.of("B"));
        assertThat(TransferRules.faults(
                        last, on, new Handover(Optional.empty(), Optional.empty(), Optional.of("inheritance"))))
                .isEmpty();
        assertThat(last.inherited("W4", List.of("Heir")).terms().transfers()).isZero();
        assertThat(WARRANTY.inherited("W2", List.of("Heir")).terms()).isEqualTo(WARRANTY.terms());
        assertThat(TransferRules.faults(
                        last, on, new Handover(Optional.of(on), Optional.empty(), Optional.of("divorce"))))
                .extracting("found")
                .contains("a sale, and that there was none");
    }
}
