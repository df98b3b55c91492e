// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.job.Signature;

/**
 * Who signed what was put before them, when, and how.
 *
 * @param by names; several only where all of them signed one paper
 * @param file the signed paper, named from the job's folder; with a typed name the picture of the name as it was drawn
 *     on a screen, which is kept with the signature and not named in the job
 * @param typed the name as typed, instead of a paper; of one person
 * @param consent what the signer agreed to before signing without paper
 */
public record SignatureInput(
        LocalDate on, List<String> by, Optional<String> file, Optional<String> typed, ConsentInput consent) {

    public SignatureInput {
        by = List.copyOf(by);
    }

    /** Nobody's signature: what is declined needs none. */
    public static SignatureInput none(LocalDate on) {
        return new SignatureInput(on, List.of(), Optional.empty(), Optional.empty(), ConsentInput.NONE);
    }

    /** As a job keeps it. */
    Signature signature() {
        return typed.isPresent()
                ? new Signature(by, Optional.empty(), typed, Optional.empty(), consent.whole())
                : new Signature(by, file, typed, Optional.empty(), Optional.empty());
    }
}
