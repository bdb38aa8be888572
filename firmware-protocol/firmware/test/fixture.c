#include "fixture.h"

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "suites.h"

unsigned fixture_lines(const char *name, void (*take)(char *line)) {
    static char line[8192];
    char path[512];
    unsigned lines = 0;

    snprintf(path, sizeof path, "%s/%s", fixtures, name);
    FILE *const file = fopen(path, "r");
    if (file == NULL) {
        printf("cannot read %s\n", path);
        return 0;
    }
    while (fgets(line, sizeof line, file) != NULL) {
        line[strcspn(line, "\r\n")] = '\0';
        lines++;
        take(line);
    }
    fclose(file);
    return lines;
}

char *fixture_cut(char *text, char mark) {
    char *const at = strchr(text, mark);
    if (at == NULL) {
        return NULL;
    }
    char *end = at;
    while (end > text && isspace((unsigned char)end[-1])) {
        end--;
    }
    *end = '\0';
    char *rest = at + 1;
    while (isspace((unsigned char)*rest)) {
        rest++;
    }
    return rest;
}

bool fixture_hex(const char *text, struct hex_bytes *bytes) {
    bytes->length = 0;
    while (*text != '\0') {
        char *end;
        const unsigned long value = strtoul(text, &end, 16);
        if (end == text || value > 0xFF || bytes->length == FIXTURE_BYTES_MAX) {
            return false;
        }
        bytes->bytes[bytes->length++] = (uint8_t)value;
        text = end;
        while (*text == ' ') {
            text++;
        }
    }
    return true;
}
