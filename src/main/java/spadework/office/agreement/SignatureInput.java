package spadework.office.agreement;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Who signed what was put before them, when, and how.
 *
 * @param by names
 * @param file the signed paper, named from the job's folder
 * @param typed the name as typed, instead of a paper
 * @param consent how the signer agreed to sign without paper
 */
public record SignatureInput(
        LocalDate on, List<String> by, Optional<String> file, Optional<String> typed, Optional<String> consent) {

    public SignatureInput {
        by = List.copyOf(by);
    }
}
