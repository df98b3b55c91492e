package spadework.company;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The license or registration.
 *
 * @param label what the state calls it, as "Contractor registration"
 * @param classification class of the license and what it allows, where the state has classes
 * @param until its last day, where it ends
 */
public record License(String label, String number, Optional<String> classification, Optional<LocalDate> until) {}
