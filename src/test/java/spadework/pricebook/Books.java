// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import spadework.company.Company;
import spadework.intake.Intake;
import spadework.intake.ReadJob;

/** The shipped price book and the invented contractor, read as the program reads them. */
public final class Books {
    private static final ReadJob SAMPLE = (ReadJob) new Intake().read(Path.of("sample-quotes/block-basement-to-swale"));

    private Books() {}

    public static PriceBook standard() {
        return SAMPLE.book();
    }

    public static Company company() {
        return SAMPLE.company();
    }

    /**
     * The shipped book with an item of the firm's own, as its file has it, read from a folder in which it is laid out.
     */
    public static PriceBook withOwn(Path folder, String item) throws IOException {
        for (String above : List.of("company.json", "fennimarsh-mark.jpg")) {
            Files.copy(Path.of("sample-quotes", above), folder.resolve(above));
        }
        ObjectMapper json = new ObjectMapper();
        ObjectNode own = (ObjectNode)
                json.readTree(Path.of("sample-quotes", "price-book.json").toFile());
        ((ArrayNode) own.get("items")).add(json.readTree(item));
        json.writeValue(folder.resolve("price-book.json").toFile(), own);
        Path job = Files.createDirectory(folder.resolve("job")).resolve("job.json");
        Files.copy(Path.of("sample-quotes", "crawl-space-between-houses", "job.json"), job);
        return ((ReadJob) new Intake().read(job)).book();
    }
}
