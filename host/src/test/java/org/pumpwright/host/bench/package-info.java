/** What tests of real firmware need: the board's own program in an emulator or on the PC, with a simulated unit on its pins. */
package org.pumpwright.host.bench;
