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

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            La primera zanja está abierta                              | WORK_DONE
            La primera zanja esta abierta                              | WORK_DONE
            Las paredes están recubiertas y usted las vio              | WORK_DONE
            La parte de afuera de las paredes está terminada           | WORK_DONE
            Usted vio la prueba con agua                               | WORK_DONE
            El terreno está nivelado, y usted dio su visto bueno       | WORK_DONE
            Terminación                                                | WORK_DONE
            La pared está recubierta, antes de taparla                 | WORK_DONE
            El contrato está firmado y la pared está terminada         | WORK_DONE
            Usted firma el contrato                                    | BEFORE_WORK
            El día en que llega la máquina                             | BEFORE_WORK
            Llega la niveladora                                        | BEFORE_WORK
            Se hizo el pedido y el material está en su lugar           | BEFORE_WORK
            Llega la membrana a prueba de agua                         | BEFORE_WORK
            El contrato está completo                                  | UNSAID
            El permiso está aprobado                                   | BEFORE_WORK
            Permiso aprobado                                           | BEFORE_WORK
            Dos días antes de que la zanja esté excavada               | BEFORE_WORK
            Primer día de trabajo                                      | BEFORE_WORK
            Usted vio nuestros planos                                  | UNSAID
            El hoyo de prueba está excavado                            | UNSAID
            La lista de tubos                                          | UNSAID
            Pago a la vista                                            | UNSAID
            El primero de junio                                        | UNSAID
            """)
    void spanishWordsTellTheSame(String when, PaymentEvent event) {
        assertThat(PaymentEvent.of(when, false)).isEqualTo(event);
    }

    /** A mark at signing outweighs what the words claim. */
    @Test
    void depositIsBeforeTheWorkWhateverItsWordsSay() {
        assertThat(PaymentEvent.of("The work is done", true)).isEqualTo(PaymentEvent.BEFORE_WORK);
        assertThat(PaymentEvent.of("The first of June", true)).isEqualTo(PaymentEvent.BEFORE_WORK);
    }
}
