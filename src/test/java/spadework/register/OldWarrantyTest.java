// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spadework.warranty.Warranties;
import spadework.warranty.Warranty;

/** A line of the register is never written anew, so it is read in the spelling of its day. */
class OldWarrantyTest {
    private static final Warranty WARRANTY = Warranties.of("2026-014-W1");

    @Test
    void warrantyIsWrittenInTheSpellingOfToday() {
        assertThat(contractor()).containsKey("license").doesNotContainKey("licence");
    }

    @Test
    void warrantyOfAnOldLineIsTheSame() throws IOException {
        Map<Object, Object> contractor = contractor();
        contractor.put("licence", contractor.remove("license"));
        assertThat(read(contractor)).isEqualTo(WARRANTY);
    }

    @Test
    void bothSpellingsAtOnceAreRefused() {
        Map<Object, Object> contractor = contractor();
        contractor.put("licence", "another");
        assertThatThrownBy(() -> read(contractor))
                .isInstanceOf(IOException.class)
                .hasMessage("\"licence\" beside \"license\", which is the same");
    }

    private static Map<Object, Object> contractor() {
        return new LinkedHashMap<>((Map<?, ?>) WarrantyJson.write(WARRANTY).get("contractor"));
    }

    private static Warranty read(Map<Object, Object> contractor) throws IOException {
        Map<String, Object> warranty = WarrantyJson.write(WARRANTY);
        warranty.put("contractor", contractor);
        return WarrantyJson.read(new JsonMembers(warranty));
    }
}
