package spadework.warranty;

/**
 * Who gives the warranty.
 *
 * @param licence label and number as printed; empty where there is none
 */
public record Contractor(String name, String address, String phone, String email, String licence) {}
