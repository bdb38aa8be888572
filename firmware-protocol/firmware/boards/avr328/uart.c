/* The line: 250000 baud, 8 data bits, no parity, 1 stop bit, both ways through rings and interrupts. */
#include <avr/interrupt.h>
#include <avr/io.h>
#include <util/atomic.h>

#include "hal.h"
#include "parts.h"
#include "ring.h"

#define DIVIDER (F_CPU / 8u / 250000u - 1u)
#define RX_SIZE 128u
#define TX_SIZE 256u

static volatile uint8_t rx_bytes[RX_SIZE];
static volatile uint8_t tx_bytes[TX_SIZE];
static struct ring rx;
static struct ring tx;

void uart_start(void) {
    ring_start(&rx, rx_bytes, RX_SIZE);
    ring_start(&tx, tx_bytes, TX_SIZE);
    UCSR0A = _BV(U2X0);
    UCSR0C = _BV(UCSZ01) | _BV(UCSZ00);
    UBRR0 = DIVIDER;
    UCSR0B = _BV(RXCIE0) | _BV(RXEN0) | _BV(TXEN0);
}

/* A byte with a framing error or lost to an overrun is left to the CRC. */
ISR(USART_RX_vect) {
    ring_put(&rx, UDR0);
}

ISR(USART_UDRE_vect) {
    uint8_t byte;
    if (ring_take(&tx, &byte)) {
        UDR0 = byte;
    } else {
        UCSR0B &= (uint8_t)~_BV(UDRIE0);
    }
}

bool hal_rx_take(uint8_t *byte) {
    return ring_take(&rx, byte);
}

uint16_t hal_tx_room(void) {
    return ring_room(&tx);
}

void hal_tx_put(const uint8_t *bytes, uint16_t length) {
    for (uint16_t i = 0; i < length; i++) {
        ring_put(&tx, bytes[i]);
    }
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        UCSR0B |= _BV(UDRIE0);
    }
}
