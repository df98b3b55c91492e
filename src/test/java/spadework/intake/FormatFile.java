// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.regex.Pattern;
import spadework.intake.law.StateRuleBook;
import spadework.intake.source.JsonPass;
import spadework.intake.source.SourceFile;

/** One of the four files, seen by the schema's own validator and by the reader. */
public enum FormatFile {
    JOB("job"),
    COMPANY("company"),
    PRICE_BOOK("price-book"),
    STATE_RULES("state-rules");

    private final String name;
    private final Schema validator;
    private final JsonNode sample;

    FormatFile(String name) {
        this.name = name;
        this.sample = parse(SampleFiles.resource("full/" + name + ".json"));
        this.validator = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schemaText(), InputFormat.JSON);
    }

    String schemaName() {
        return name + ".schema.json";
    }

    String schemaText() {
        return SampleFiles.resource("/spadework/intake/" + name + ".schema.json");
    }

    JsonNode schema() {
        return parse(schemaText());
    }

    /** A copy of the sample, to be changed. */
    JsonNode sample() {
        return sample.deepCopy();
    }

    List<String> schemaErrors(JsonNode document) {
        return validator.validate(document.toString(), InputFormat.JSON).stream()
                .map(error -> error.getInstanceLocation() + " " + error.getMessage())
                .toList();
    }

    /** Whether the schema finds anything; it looks no further than the first. */
    boolean isRefusedBySchema(JsonNode document) {
        return !validator
                .validate(
                        document.toString(),
                        InputFormat.JSON,
                        context -> context.executionConfig(config -> config.failFast(true)))
                .isEmpty();
    }

    /** Reads the document in place of the sample, beside the samples of the files that it needs. */
    SourceFile read(JsonNode document) {
        SourceFile sheet = sheet(document);
        if (this == STATE_RULES) {
            StateRuleBook.bundled().changedBy(sheet);
        } else if (this == COMPANY) {
            shop(sheet, PRICE_BOOK.sheet(PRICE_BOOK.sample));
        } else if (this == PRICE_BOOK) {
            shop(COMPANY.sheet(COMPANY.sample), sheet);
        } else {
            CompanyAndBook shop = SampleShop.SHOP;
            shop.job(sheet);
        }
        return sheet;
    }

    /** The shop of the samples, read once. */
    private static final class SampleShop {
        static final CompanyAndBook SHOP = shop(COMPANY.sheet(COMPANY.sample), PRICE_BOOK.sheet(PRICE_BOOK.sample));
    }

    private static CompanyAndBook shop(SourceFile company, SourceFile book) {
        return CompanyAndBook.read(
                company, book, () -> JsonPass.over("default", SampleFiles.resource(SampleFiles.BUNDLED)));
    }

    private SourceFile sheet(JsonNode document) {
        return JsonPass.over(name, document.toString());
    }

    /** True when the reader finds a fault in the value there or inside it. */
    static boolean isRefusedAt(SourceFile sheet, String pointer) {
        return sheet.faults().stream()
                .anyMatch(fault -> fault.place().pointer().equals(pointer)
                        || fault.place().pointer().startsWith(pointer + "/"));
    }

    /** True when the reader says that a key is missing in the object there. */
    static boolean isWanting(SourceFile sheet, String object) {
        return sheet.faults().stream()
                .filter(fault -> fault.place().pointer().matches(Pattern.quote(object) + "(/[^/]*)?"))
                .anyMatch(fault -> fault.found().matches("no \".*|no new price|.* without \".*"));
    }

    public static JsonNode parse(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException(broken);
        }
    }
}
