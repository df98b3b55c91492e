package spadework.job;

import java.util.Optional;

/**
 * How somebody signed: on paper that is kept as a file, or by a typed name with a note of how they agreed to that.
 *
 * @param file a scan or photo of the signed paper, in the job's folder
 * @param typed the name as typed
 * @param consent how the signer agreed to sign without paper (15 USC 7001(c))
 */
public record Signature(Optional<String> file, Optional<String> typed, Optional<String> consent) {}
