package org.pumpwright.host.text;

import java.util.regex.Pattern;

/** Words that put intent or fault on a person, in every language of the papers. No paper may bear one. */
public final class ForbiddenWords {
    /** Finds any of them, whatever its ending. */
    public static final Pattern ANY = Pattern.compile(
            "abus(e|o|iv)|fraud|misus|negligen|careless|tamper|customer'?s? error|operator'?s? error|fault of|blame"
                    + "|mal uso|culpa|error del (cliente|operador)|descuid|mala fe|dolos[oa]",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private ForbiddenWords() {}
}
