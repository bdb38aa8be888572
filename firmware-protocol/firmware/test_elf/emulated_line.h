/* What the two halves of the emulated bench share. */
#ifndef STAND_EMULATED_LINE_H
#define STAND_EMULATED_LINE_H

void line_start(void);
void line_set_port(const char *port);
/* Sends a keep-alive when one is due. */
void line_keep_alive(void);
/* Takes what has come from the board. */
void line_listen(void);
/* A millisecond of wall time for the kernel to hand bytes on. */
void emulated_breathe(void);
unsigned emulated_exchange_ms(void);

#endif
