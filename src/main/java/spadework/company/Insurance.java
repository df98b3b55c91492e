package spadework.company;

import java.time.LocalDate;

/** Liability cover, as the certificate states it. */
public record Insurance(String carrier, String policy, String limits, LocalDate until) {}
