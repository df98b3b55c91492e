package spadework.company;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The licence or registration.
 *
 * @param label what the state calls it, as "Contractor registration"
 * @param classification class of the licence and what it allows, where the state has classes
 * @param until its last day, where it ends
 */
public record Licence(String label, String number, Optional<String> classification, Optional<LocalDate> until) {}
