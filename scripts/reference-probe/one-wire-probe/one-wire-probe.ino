// Still-head probe with one or two digital one-wire sensors (DS18B20 or alike).
// Needs the OneWire library. Wiring and line language: ../README.md
#include <OneWire.h>

const byte busPin = 2;
const char *const names[] = {"head", "pot"};
const byte mostSensors = 2;
const unsigned long everyMs = 1000;
const unsigned long conversionMs = 750;  // 12 bit, data sheet

OneWire bus(busPin);
byte addresses[mostSensors][8];
byte sensorCount = 0;

void setup() {
  Serial.begin(115200);
  findSensors();
}

void loop() {
  const unsigned long startMs = millis();
  if (sensorCount == 0) findSensors();
  bus.reset();
  bus.skip();
  bus.write(0x44);  // every sensor: convert
  delay(conversionMs);
  // A sensor that is not found is still named, so that its absence is seen.
  const byte shown = sensorCount == 0 ? 1 : sensorCount;
  for (byte index = 0; index < shown; index++) {
    if (index > 0) Serial.print(',');
    Serial.print(names[index]);
    Serial.print(',');
    printTemperature(index);
  }
  Serial.println();
  while (millis() - startMs < everyMs) {
  }
}

void findSensors() {
  bus.reset_search();
  sensorCount = 0;
  while (sensorCount < mostSensors && bus.search(addresses[sensorCount])) {
    if (OneWire::crc8(addresses[sensorCount], 7) == addresses[sensorCount][7]) sensorCount++;
  }
}

void printTemperature(byte index) {
  byte scratchpad[9];
  bool allOnes = true;
  bool allZeros = true;
  if (index < sensorCount && bus.reset()) {
    bus.select(addresses[index]);
    bus.write(0xBE);  // read scratchpad
    for (byte at = 0; at < 9; at++) {
      scratchpad[at] = bus.read();
      if (scratchpad[at] != 0xFF) allOnes = false;
      if (scratchpad[at] != 0x00) allZeros = false;
    }
  }
  // Nine zeros have the right checksum too: a shorted bus is no 0 degrees.
  if (allOnes || allZeros || OneWire::crc8(scratchpad, 8) != scratchpad[8]) {
    Serial.print("nan");
    return;
  }
  const int raw = (int16_t)((scratchpad[1] << 8) | scratchpad[0]);
  Serial.print(raw / 16.0, 4);
}
