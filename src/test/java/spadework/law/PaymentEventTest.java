// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Only words that name work done free a payment of the question whether it is taken ahead of the work (Cal. BPC
 * 7159.5(a)(5) bars that); which words do is common practice, no source.
 */
class PaymentEventTest {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            The first trench is open                              | WORK_DONE
            The machine is on site and the ground is dug          | WORK_DONE
            The walls are coated and you have seen them           | WORK_DONE
            The wall is coated, before it is covered              | WORK_DONE
            Before the trench is closed, once the wall is coated  | WORK_DONE
            You have SEEN the flow test                           | WORK_DONE
            The contract is signed and the wall is done           | WORK_DONE
            The site is clean, and you have signed off            | WORK_DONE
            Completion                                            | WORK_DONE
            The planting is done                                  | WORK_DONE
            Application of the coating is complete                | WORK_DONE
            The contract is completed and signed                  | BEFORE_WORK
            The permit for the work is done                       | BEFORE_WORK
            You have seen the machine                             | BEFORE_WORK
            The order is placed and the material is in place      | BEFORE_WORK
            The application for the permit is filled in           | BEFORE_WORK
            The paperwork is done                                 | UNSAID
            You have seen our plans                               | UNSAID
            The test pit is dug                                   | UNSAID
            Completion of the loan                                | UNSAID
            You sign                                              | BEFORE_WORK
            The day the machine arrives                           | BEFORE_WORK
            Pipe and stone are delivered                          | BEFORE_WORK
            First day of work                                     | BEFORE_WORK
            Two days before the trench is dug                     | BEFORE_WORK
            Before backfill                                       | BEFORE_WORK
            The first of June                                     | UNSAID
            Redesign of the garden                                | UNSAID
            """)
    void wordsTellUponWhatAPaymentFallsDue(String when, PaymentEvent event) {
        assertThat(PaymentEvent.of(when, false)).isEqualTo(event);
    }

    /** A mark at signing outweighs what the words claim. */
    @Test
    void depositIsBeforeTheWorkWhateverItsWordsSay() {
        assertThat(PaymentEvent.of("The work is done", true)).isEqualTo(PaymentEvent.BEFORE_WORK);
        assertThat(PaymentEvent.of("The first of June", true)).isEqualTo(PaymentEvent.BEFORE_WORK);
    }
}
