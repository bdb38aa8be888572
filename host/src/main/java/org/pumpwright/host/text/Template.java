package org.pumpwright.host.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text with gaps. {@code {}} is the next gap, {@code {2}} the second one wherever it stands, {@code {*}} the next gap for
 * what a person typed or a file names, which is never translated. Thread-safe.
 *
 * @param pieces what stands before, between and after the gaps; one more than there are gaps
 * @param order which value each gap takes, from 0
 * @param free whether each gap takes anything as it is
 */
record Template(List<String> pieces, List<Integer> order, List<Boolean> free) {
    private static final Pattern GAP = Pattern.compile("\\{(\\d?|\\*)\\}");

    Template {
        pieces = List.copyOf(pieces);
        order = List.copyOf(order);
        free = List.copyOf(free);
    }

    static Template of(String text) {
        List<String> pieces = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        List<Boolean> free = new ArrayList<>();
        Matcher gap = GAP.matcher(text);
        int from = 0;
        while (gap.find()) {
            pieces.add(text.substring(from, gap.start()));
            String number = gap.group(1);
            boolean numbered = !number.isEmpty() && !number.equals("*");
            order.add(numbered ? Integer.parseInt(number) - 1 : order.size());
            free.add(number.equals("*"));
            from = gap.end();
        }
        pieces.add(text.substring(from));
        return new Template(pieces, order, free);
    }

    int gaps() {
        return order.size();
    }

    /** How many characters are not gaps. */
    int literal() {
        return pieces.stream().mapToInt(String::length).sum();
    }

    /** The text with these values in its gaps. */
    String filled(Object... values) {
        StringBuilder filled = new StringBuilder(literal() + 32);
        for (int i = 0; i < order.size(); i++) {
            filled.append(pieces.get(i)).append(values[order.get(i)]);
        }
        return filled.append(pieces.get(order.size())).toString();
    }
}
