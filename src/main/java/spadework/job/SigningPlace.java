package spadework.job;

/** Where a contract is signed. */
public enum SigningPlace {
    HOME,
    OUR_OFFICE
}
