// The board core calls this while a sketch waits. Asleep, the simulated chip can leave the waiting out.
#include <Arduino.h>
#include <avr/sleep.h>

void yield() {
  set_sleep_mode(SLEEP_MODE_IDLE);
  sleep_mode();
}
