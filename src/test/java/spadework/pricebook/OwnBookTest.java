// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The demonstration contractor's own price book: it starts from the default one and says where it differs. */
class OwnBookTest {
    private final JsonNode own = Shipped.sample("price-book.json");

    @Test
    void startsFromTheDefaultBook() {
        assertThat(own.get("startsFrom").asText()).isEqualTo("default");
    }

    @Test
    void changesOneDefaultItemAndAddsItsOwn() {
        assertThat(own.get("items"))
                .extracting(item -> item.get("code").asText())
                .containsExactly("STONE-MACH", "AC-LIFT", "STEP-RESET");
        assertThat(Shipped.items()).containsKey("STONE-MACH").doesNotContainKeys("AC-LIFT", "STEP-RESET");
    }

    @Test
    void everyChangeHasASourceDatedNotAfterTheBook() {
        LocalDate dated = LocalDate.parse(own.get("dated").asText());

        assertThat(own.get("items")).allSatisfy(item -> {
            assertThat(item.get("source").get("text").asText()).hasSizeGreaterThan(20);
            assertThat(LocalDate.parse(item.get("source").get("on").asText())).isBeforeOrEqualTo(dated);
        });
    }
}
