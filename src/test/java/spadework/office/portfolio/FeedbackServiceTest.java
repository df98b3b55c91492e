// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.feedback.RateRule;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.SampleJobFolder;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Issuing;
import spadework.office.book.BookService;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;
import spadework.press.VeraPdf;
import spadework.register.Register;

/** From closed jobs to the rates of the book. */
class FeedbackServiceTest {
    private static final LocalDate DECEMBER = LocalDate.of(2026, 12, 1);

    @TempDir
    Path root;

    /** Three closed jobs, alike but for the hours of digging: 16, 20 and 40 h for 90 cy. */
    @BeforeEach
    void close() throws IOException {
        SampleJobFolder site = SampleJobFolder.in(root);
        Office office = Office.with(TemplateFolder.NONE);
        new Issuing(office, SampleJobFolder.TODAY).issue(site.folder());
        new Accepting(office, SampleJobFolder.TODAY).accept(site.folder(), List.of(), SampleJobFolder.yes());
        site.edit(job -> {
            ObjectNode built =
                    job.putObject("asBuilt").put("started", "2026-09-08").put("finished", "2026-09-25");
            built.set("actuals", SampleJobFolder.json("""
                    [{"code": "DIG-MACH", "quantity": "90 cy", "hours": "16 h"},
                     {"code": "STONE-MACH", "quantity": "20 cy", "hours": "5 h", "material": "$1,400.00"}]"""));
            job.putObject("closed").put("completed", "2026-09-25");
        });
        copy(site.folder(), root.resolve("second"), "16 h", "20 h");
        copy(site.folder(), root.resolve("third"), "16 h", "40 h");
    }

    private static void copy(Path from, Path to, String old, String now) throws IOException {
        try (var all = Files.walk(from)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        Path job = to.resolve("job.json");
        Files.writeString(
                job, Files.readString(job).replace("\"hours\" : \"" + old + "\"", "\"hours\" : \"" + now + "\""));
        assertThat(Files.readString(job)).contains(now);
    }

    private FeedbackService service(Path tree, RateRule rule) throws IOException {
        return new FeedbackService(tree, BookService.near(tree), rule);
    }

    @Test
    void ratesAreSuggestedWithTheirEvidenceAndNothingIsWritten() throws IOException {
        String before = Files.readString(root.resolve("price-book.json"));
        Reply answered = service(root, RateRule.MEDIAN).tell();
        assertThat(answered.err()).isEmpty();
        assertThat(answered.out())
                .anyMatch(line ->
                        line.startsWith("DIG-MACH labor/perHour: ") && line.endsWith("(median of the last jobs)"))
                .filteredOn(line -> line.startsWith("  2026-014, finished 2026-09-25, silty clay, damp: "))
                .hasSizeGreaterThanOrEqualTo(3);
        assertThat(Files.readString(root.resolve("price-book.json"))).isEqualTo(before);
    }

    @Test
    void acceptedRateIsInTheBookDatedWithTheJobsAsItsReason() throws IOException {
        Reply answered = service(root, RateRule.MEDIAN).accept(List.of("DIG-MACH"), DECEMBER);
        assertThat(answered.err()).isEmpty();
        assertThat(answered.out()).anyMatch(line -> line.startsWith("DIG-MACH labor/perHour: "));
        Reply shown = BookService.near(root).show("DIG-MACH");
        assertThat(shown.out()).anyMatch(line -> line.startsWith("2026-12-01  median of the last jobs: 2026-014 "));
        assertThat(service(root, RateRule.MEDIAN).tell().out()).noneMatch(line -> line.startsWith("DIG-MACH labor"));
        assertThat(service(root, RateRule.MEDIAN)
                        .accept(List.of("AC-LIFT"), DECEMBER)
                        .done())
                .isFalse();
    }

    @Test
    void acceptedCostOfMaterialIsNotSuggestedAgain() throws IOException {
        assertThat(service(root, RateRule.MEDIAN).tell().out())
                .anyMatch(line -> line.startsWith("STONE-MACH material/cost: "));
        service(root, RateRule.MEDIAN).accept(List.of("STONE-MACH"), DECEMBER);
        assertThat(service(root, RateRule.MEDIAN).tell().out())
                .noneMatch(line -> line.matches("STONE-MACH (material|labor)/.*"));
    }

    @Test
    void signedPriceStaysWhenTheBookLearns() throws IOException {
        String total = ((Bid) Office.with(TemplateFolder.NONE).bid(root.resolve("second")))
                .total()
                .text();
        service(root, RateRule.MEDIAN).accept(List.of("DIG-MACH", "STONE-MACH"), DECEMBER);
        assertThat(((Bid) Office.with(TemplateFolder.NONE).bid(root.resolve("second")))
                        .total()
                        .text())
                .isEqualTo(total);
    }

    @Test
    void feedbackIsPrintedForASeasonAndForOneJob() throws IOException {
        for (Path tree : List.of(root, root.resolve("second"))) {
            Path out = root.resolve("out");
            Reply answered = service(tree, RateRule.STEP).print(out, DECEMBER, TemplateFolder.NONE);
            assertThat(answered.out())
                    .containsExactly(
                            out.resolve("feedback.pdf").toString(),
                            out.resolve("feedback.xlsx").toString());
            byte[] pdf = Files.readAllBytes(out.resolve("feedback.pdf"));
            service(tree, RateRule.STEP).print(out, DECEMBER, TemplateFolder.NONE);
            assertThat(Files.readAllBytes(out.resolve("feedback.pdf"))).isEqualTo(pdf);
            assertThat(VeraPdf.failedRules(pdf))
                    .as("PDF/UA-1 and PDF/A-3a, %s", tree)
                    .isEmpty();
            byte[] sheet = Files.readAllBytes(out.resolve("feedback.xlsx"));
            try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(sheet))) {
                assertThat(workbook.getSheet("Items").getRow(3).getCell(0).getStringCellValue())
                        .isEqualTo("DIG-MACH");
            }
        }
    }

    @Test
    void openJobsSayNothingYet() throws IOException {
        Reply answered = service(Path.of("sample-quotes/block-basement-to-swale"), RateRule.MEDIAN)
                .tell();
        assertThat(answered.done()).isFalse();
        assertThat(answered.err()).hasSize(1).allMatch(line -> line.contains("no closed job with actuals"));
    }

    @Test
    void registerOfAClosedJobIsNotTouched() throws IOException {
        int before = Register.of(root.resolve("second")).entries().size();
        service(root, RateRule.MEDIAN).accept(List.of("DIG-MACH"), DECEMBER);
        assertThat(Register.of(root.resolve("second")).entries()).hasSize(before);
        assertThat(new ObjectMapper()
                        .readTree(Files.readString(root.resolve("second/job.json")))
                        .has("closed"))
                .isTrue();
    }
}
