// SPDX-License-Identifier: Apache-2.0
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
            The above is given in lieu of all others. | implied-disclaimed
            This warranty stands in lieu of what the law gives. | implied-disclaimed
            There are no other warranties. | implied-disclaimed
            Sold without any warranty. | implied-disclaimed
            The wall is taken as is. | implied-disclaimed
            The pump is sold AS-IS, where it stands. | implied-disclaimed
            No express or implied warranties apply. | implied-disclaimed
            Lifetime warranty. It covers the structure. | lifetime-bare
            Lifetime warranty for the lifetime of the warranty. | lifetime-bare
            Lifetime warranty on the walls | lifetime-bare
            A life-time guarantee. | lifetime-bare
            Good for a life time. | lifetime-bare
            We warrant the drain. The warranty holds for life. | lifetime-bare
            Esta garantía se da en lugar de toda otra garantía, expresa o implícita. | implied-disclaimed
            ESTA GARANTIA SUSTITUYE A TODAS LAS DEMAS GARANTIAS. | implied-disclaimed
            La bomba se vende tal como está. | implied-disclaimed
            La pared se acepta en el estado en que se encuentra. | implied-disclaimed
            Tal cual, con todos sus defectos. | implied-disclaimed
            No hay garantía de comerciabilidad. | implied-disclaimed
            No se da ninguna garantía implícita. | implied-disclaimed
            No ofrecemos garantías expresas ni implícitas. | implied-disclaimed
            No hay otras garantías. | implied-disclaimed
            Se excluyen todas las garantías implícitas. | implied-disclaimed
            Las garantías implícitas quedan excluidas. | implied-disclaimed
            La idoneidad para un fin determinado queda excluida. | implied-disclaimed
            El comprador renuncia a toda garantía. | implied-disclaimed
            Esta es la única y exclusiva garantía. | implied-disclaimed
            Sin garantía de ningún tipo. | implied-disclaimed
            La bomba se instala sin garantía. | implied-disclaimed
            Garantía de por vida. | lifetime-bare
            Damos una garantía vitalicia en las paredes. | lifetime-bare
            La garantía vale para toda la vida. | lifetime-bare
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
    @ValueSource(
            strings = {
                "Lifetime warranty: as long as the first owner owns the house.",
                "A warranty for the lifetime of the house.",
                "Warranted for the original owner's lifetime.",
                "Lifetime means 40 years.",
                "For the life of the pump the maker stands by it.",
                "The old pipe is left as is.",
                "Gravel in lieu of topsoil beside the wall.",
                "Washed stone in lieu of any other fill.",
                "No other wall is covered by this warranty.",
                "The new sump pump goes in place of the old one, which was under warranty.",
                "Mortar of the same colour as is shown in photo 3.",
                "Water through the floor slab is not covered.",
                "Some States do not allow limitations on how long an implied warranty lasts, so the above"
                        + " limitation may not"
                        + " apply to you.",
                "Some States do not allow the exclusion or limitation of incidental or consequential damages,"
                        + " so the above"
                        + " limitation or exclusion may not apply to you.",
                "Some States do not allow the exclusion of consequential damages or limits on an implied"
                        + " warranty, so it may"
                        + " not apply to you.",
                "Fill the trench as is usual in clay.",
                "Implied warranties last as long as this warranty does.",
                "We repair or replace a covered part. You pay nothing.",
                "Garantía de por vida: mientras el primer dueño tenga la casa.",
                "Una garantía por la vida de la casa.",
                "El tubo viejo se queda; lo dejamos tal como está.",
                "Grava en lugar de tierra vegetal junto a la pared.",
                "Grava lavada en vez de cualquier otro relleno.",
                "Esta garantía no cubre ninguna otra pared.",
                "La bomba misma, que garantiza su fabricante, y el agua que entra mientras está parada.",
                "Las garantías implícitas duran lo que dura esta garantía.",
                "La forma de la pared, tal como está en el plano.",
                "Excluido de esta garantía: el piso de concreto.",
                "No se hace ningún trabajo sin un papel firmado. La garantía empieza el día en que se termina.",
                "No work is done without a signed paper. The warranty starts on the day of completion."
            })
    void ordinaryWordingPasses(String text) {
        assertThat(WarrantyWording.of(Map.of("terms 1", text))).isEmpty();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            Implied warranties are limited to the term above. | true
            This warranty lasts ten years. | false
            Las garantías implícitas se limitan al plazo de arriba. | true
            Esta garantía dura diez años. | false
            """)
    void limitOfImpliedWarrantiesIsSeen(String text, boolean limits) {
        assertThat(WarrantyWording.limitsImplied(text)).isEqualTo(limits);
    }
}
