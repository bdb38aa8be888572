/* The fields of a golden frame, `name=value name=value`. */
#ifndef STAND_GOLDEN_FIELDS_H
#define STAND_GOLDEN_FIELDS_H

#include <stdbool.h>
#include <stdint.h>

#include "message.h"

/* The text of a field up to the next blank, in a buffer that the next call uses again; "" when it is missing. */
const char *field_text(const char *fields, const char *name);

/* A missing field fails the check. */
uint32_t field_number(const char *fields, const char *name);
/* The same for a name that ends in a number: `mean` and 2 is mean2. */
uint32_t field_numbered(const char *fields, const char *name, unsigned number);

uint64_t field_long(const char *fields, const char *name);

struct identity identity_of(const char *fields);
struct description description_of(const char *fields);
struct pulse_window pulse_window_of(const char *fields);
struct sample sample_of(const char *fields);
struct event event_of(const char *fields);

#endif
