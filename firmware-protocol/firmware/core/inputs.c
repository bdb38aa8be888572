#include "inputs.h"

void inputs_read(struct inputs *inputs) {
    const uint8_t now = hal_inputs();
    const uint8_t differ = (uint8_t)(now ^ inputs->last);
    inputs->agreed = (uint8_t)((inputs->agreed & differ) | (now & (uint8_t)~differ));
    inputs->last = now;
}

void inputs_start(struct inputs *inputs) {
    inputs->last = 0;
    inputs->agreed = 0;
    inputs_read(inputs);
    inputs_read(inputs);
}
