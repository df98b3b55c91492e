package spadework.company;

/**
 * The licence or registration.
 *
 * @param label what the state calls it, as "Contractor registration"
 */
public record Licence(String label, String number) {}
