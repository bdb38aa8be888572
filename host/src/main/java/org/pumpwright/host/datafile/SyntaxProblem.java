package org.pumpwright.host.datafile;

import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;

/** Says in one line where a text stops being YAML, and why. Thread-safe. */
final class SyntaxProblem {
    private static final Pattern BREAK = Pattern.compile("\\s*\\R\\s*");
    private static final Pattern LIBRARY_WORDS = Pattern.compile(", from `[^`]*`");

    private SyntaxProblem() {}

    /** Notes in the document what stopped the parser. */
    static void note(Document document, JacksonException e) {
        if (e.getCause() instanceof MarkedYamlEngineException marked) {
            document.refuse(
                    place(marked.getProblemMark()), "", "is not YAML here: " + marked.getProblem() + begun(marked));
        } else {
            String oneLine = BREAK.matcher(e.getOriginalMessage()).replaceAll(" ");
            String says = LIBRARY_WORDS.matcher(oneLine).replaceAll("");
            document.refuse(place(e.getLocation()), "", "is not usable YAML here: " + says);
        }
    }

    private static Place place(Optional<Mark> mark) {
        return new Place(
                mark.map(at -> at.getLine() + 1).orElse(0),
                mark.map(at -> at.getColumn() + 1).orElse(0),
                "");
    }

    private static Place place(@Nullable TokenStreamLocation at) {
        return at == null ? new Place(0, 0, "") : new Place(at.getLineNr(), at.getColumnNr(), "");
    }

    /** What the parser was in the midst of: an open bracket or quote is where the mistake was made. */
    private static String begun(MarkedYamlEngineException marked) {
        String line = marked.getContextMark()
                .map(mark -> ", begun in line " + (mark.getLine() + 1))
                .orElse("");
        return marked.getContext() == null ? "" : " (" + marked.getContext() + line + ")";
    }
}
