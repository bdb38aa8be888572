package org.pumpwright.host.cli;

/** Text for a terminal of 80 columns. Thread-safe. */
public final class WrappedText {
    /** One less than a terminal has: some go to the next line when the last column is written. */
    static final int COLUMNS = 79;

    private WrappedText() {}

    /** The words in lines of at most 79 characters, further lines set in; a longer word has a line of its own. */
    public static String of(String words, int setIn) {
        StringBuilder text = new StringBuilder();
        int column = 0;
        for (String word : words.split(" ", -1)) {
            if (column > setIn && column + 1 + word.length() > COLUMNS) {
                text.append(System.lineSeparator()).append(" ".repeat(setIn));
                column = setIn;
            } else if (!text.isEmpty()) {
                text.append(' ');
                column++;
            }
            text.append(word);
            column += word.length();
        }
        return text.toString();
    }
}
