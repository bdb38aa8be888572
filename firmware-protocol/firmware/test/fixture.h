/* Fixture files: lines, and bytes written as hexadecimal with blanks between them. */
#ifndef STAND_FIXTURE_H
#define STAND_FIXTURE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#define FIXTURE_BYTES_MAX 1024u

struct hex_bytes {
    size_t length;
    uint8_t bytes[FIXTURE_BYTES_MAX];
};

/* Calls `take` with each line of the file, without its end. Returns the number of lines, 0 without the file. */
unsigned fixture_lines(const char *name, void (*take)(char *line));

/* Cuts the text at the mark and returns what follows, or NULL. Blanks around the mark go. */
char *fixture_cut(char *text, char mark);

/* False when the text is not hexadecimal. */
bool fixture_hex(const char *text, struct hex_bytes *bytes);

#endif
