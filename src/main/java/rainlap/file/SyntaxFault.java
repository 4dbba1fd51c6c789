package rainlap.file;

/**
 * Where a text stops being JSON, in words for the person who wrote it.
 *
 * @param at the byte
 */
record SyntaxFault(int at, String what, String hint) {
    /** The first fault, found by an own strict scan from the file's start. */
    static SyntaxFault find(byte[] bytes, int from) {
        return new SyntaxScan(bytes, from).firstFault();
    }
}
