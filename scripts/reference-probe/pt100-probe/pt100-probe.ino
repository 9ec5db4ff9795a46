// Still-head probe with a Pt100 on a MAX31865 amplifier board.
// Sends ohms: the program turns them into degrees by IEC 60751. Wiring and line language: ../README.md
#include <SPI.h>

const byte selectPin = 10;
const float referenceOhm = 430.0;     // the precise resistor on the board; 4300 for Pt1000
const bool threeWires = false;        // true for a three-wire sensor, false for two or four
const bool mains50Hz = true;          // filter out 50 Hz; false for 60 Hz
const unsigned long everyMs = 1000;

const SPISettings settings(1000000, MSBFIRST, SPI_MODE1);

byte readRegister(byte address) {
  SPI.beginTransaction(settings);
  digitalWrite(selectPin, LOW);
  SPI.transfer(address);
  const byte value = SPI.transfer(0xFF);
  digitalWrite(selectPin, HIGH);
  SPI.endTransaction();
  return value;
}

void writeRegister(byte address, byte value) {
  SPI.beginTransaction(settings);
  digitalWrite(selectPin, LOW);
  SPI.transfer(address);
  SPI.transfer(value);
  digitalWrite(selectPin, HIGH);
  SPI.endTransaction();
}

void configure() {
  // Bias on, automatic conversion, wires, clear faults, filter: MAX31865 data sheet, table 2.
  writeRegister(0x80, 0xC2 | (threeWires ? 0x10 : 0) | (mains50Hz ? 0x01 : 0));
  delay(70);
}

void setup() {
  Serial.begin(115200);
  pinMode(selectPin, OUTPUT);
  digitalWrite(selectPin, HIGH);
  SPI.begin();
  configure();
}

void loop() {
  const unsigned long startMs = millis();
  const unsigned int register16 = ((unsigned int)readRegister(0x01) << 8) | readRegister(0x02);
  const bool fault = register16 & 1;  // open, shorted or over-voltage
  const unsigned int ratio = register16 >> 1;
  Serial.print("head,");
  if (fault || ratio == 0) {
    Serial.println("nan");
    configure();  // clears the fault, for a sensor that is plugged in again
  } else {
    Serial.print(ratio * referenceOhm / 32768.0, 4);
    Serial.println(" ohm");
  }
  const unsigned long tookMs = millis() - startMs;
  if (tookMs < everyMs) delay(everyMs - tookMs);
}
