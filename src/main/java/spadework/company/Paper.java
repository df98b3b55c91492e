package spadework.company;

/** The size of the page. */
public enum Paper {
    LETTER,
    A4
}
