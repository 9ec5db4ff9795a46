// Still-head probe with one or two digital one-wire sensors (DS18B20 or alike).
// Needs no library. Wiring and line language: ../README.md
#include "one-wire-bus.h"

const byte sensorsWired = 1;  // 2 with one sensor in the pot
const byte dataPin = 2;
const unsigned long everyMs = 1000;
const unsigned long conversionMs = 750;  // 12 bit, data sheet

// Two bytes in each sensor are free for notes and are lost with its supply: while they hold this, what the
// sensor shows was measured and is not the 85 degrees that it wakes up with.
const byte note[] = {0x53, 0x48};

const char *const names[] = {"head", "pot"};
OneWireBus bus(dataPin);
byte addresses[sensorsWired][8];
bool allFound = false;
bool measures[sensorsWired];

void leaveNote(byte index) {
  if (!bus.reset()) return;
  bus.select(addresses[index]);
  bus.write(0x4E);  // write scratchpad: two notes, 12 bit
  bus.write(note[0]);
  bus.write(note[1]);
  bus.write(0x7F);
}

// Names go by the order of the sensors' numbers, which is only known when every sensor is there.
void findSensors() {
  allFound = bus.search(addresses, sensorsWired) == sensorsWired;
  for (byte index = 0; allFound && index < sensorsWired; index++) leaveNote(index);
}

// Without its answer the sensor may not have heard, and would show an old temperature.
bool startMeasuring(byte index) {
  if (!allFound || !bus.reset()) return false;
  bus.select(addresses[index]);
  bus.write(0x44);        // convert
  return !bus.readBit();  // 0 as long as it is at it
}

void printTemperature(byte index) {
  byte scratchpad[9] = {0};
  if (measures[index] && bus.reset()) {
    bus.select(addresses[index]);
    bus.write(0xBE);  // read scratchpad
    for (byte at = 0; at < 9; at++) scratchpad[at] = bus.read();
  }
  const bool sound = OneWireBus::crc8(scratchpad, 8) == scratchpad[8];
  if (sound && scratchpad[2] == note[0] && scratchpad[3] == note[1]) {
    const int16_t raw = (scratchpad[1] << 8) | scratchpad[0];
    Serial.print(raw / 16.0, 4);
  } else {
    Serial.print("nan");
    if (allFound) leaveNote(index);
  }
}

void setup() { Serial.begin(115200); }

void loop() {
  const unsigned long startMs = millis();
  if (!allFound) findSensors();
  for (byte index = 0; index < sensorsWired; index++) measures[index] = startMeasuring(index);
  delay(conversionMs);
  for (byte index = 0; index < sensorsWired; index++) {
    if (index > 0) Serial.print(',');
    Serial.print(names[index]);
    Serial.print(',');
    printTemperature(index);
  }
  Serial.println();
  const unsigned long tookMs = millis() - startMs;
  if (tookMs < everyMs) delay(everyMs - tookMs);
}
