// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each fault has one message: place, found, allowed, fix. The tables lie beside the samples. */
class FaultTablesTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}")
    @MethodSource("jobRows")
    void jobIsRefusedFor(FaultCase row) {
        check("job.json", row);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("companyRows")
    void companyIsRefusedFor(FaultCase row) {
        check("company.json", row);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bookRows")
    void priceBookIsRefusedFor(FaultCase row) {
        check("price-book.json", row);
    }

    @Test
    void samplesWithoutChangeHaveNoFault() {
        assertThat(SampleFiles.in(folder).faults()).isEmpty();
    }

    private void check(String file, FaultCase row) {
        List<String> faults =
                SampleFiles.in(folder).with(file, row.from(), row.to()).faults();
        assertThat(FaultCase.lines(faults)).isEqualTo(row.faults());
    }

    static Stream<FaultCase> jobRows() {
        return FaultCase.table("faults-of-a-job.txt");
    }

    static Stream<FaultCase> companyRows() {
        return FaultCase.table("faults-of-a-company.txt");
    }

    static Stream<FaultCase> bookRows() {
        return FaultCase.table("faults-of-a-price-book.txt");
    }
}
