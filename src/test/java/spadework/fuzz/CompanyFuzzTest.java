// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import spadework.intake.Intake;

/** Whatever a company's file says, it is read or refused with faults. */
class CompanyFuzzTest {
    private static final Intake INTAKE = new Intake();

    @FuzzTest
    void companyIsReadOrRefused(byte[] file) {
        ReadableMessage.hold(INTAKE.faultsOfCompany(new String(file, StandardCharsets.UTF_8), "company.json"));
    }
}
