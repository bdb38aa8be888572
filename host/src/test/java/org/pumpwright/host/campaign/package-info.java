/**
 * The fault campaign: the microcontroller's own program in the emulator, a host that carries out an acceptance run, and a
 * fault in the middle of it. Shows how long anything is driven afterwards and what the record says. Uses app and bench.
 */
package org.pumpwright.host.campaign;
