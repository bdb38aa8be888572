package org.pumpwright.host.report.pdf;

import java.time.OffsetDateTime;

/**
 * Where a paper comes from; with the page it settles every byte of the document, so nothing of it may be the time of
 * printing. Thread-safe.
 *
 * @param author who answers for it: the shop, or the technician
 * @param date of the record, to the second
 * @param program name and version of the program that made the record
 */
public record Origin(String author, OffsetDateTime date, String program) {}
