// The one-wire bus by hand, so that the sketch needs no library. Times in microseconds and the search are
// those of the sensor maker's application notes 126 and 187 (from memory).
#pragma once
#include <Arduino.h>

class OneWireBus {
 public:
  explicit OneWireBus(byte dataPin) : pin(dataPin) {}

  // True when a sensor answers.
  bool reset() {
    digitalWrite(pin, LOW);  // what the pin sends whenever it is an output
    pinMode(pin, OUTPUT);
    delayMicroseconds(480);
    noInterrupts();
    pinMode(pin, INPUT);
    delayMicroseconds(70);
    const bool answered = digitalRead(pin) == LOW;
    interrupts();
    delayMicroseconds(410);
    return answered && digitalRead(pin) == HIGH;  // a shorted wire stays low
  }

  void write(byte value) {
    for (byte at = 0; at < 8; at++) writeBit(bitRead(value, at));
  }

  byte read() {
    byte value = 0;
    for (byte at = 0; at < 8; at++) bitWrite(value, at, readBit());
    return value;
  }

  bool readBit() {
    noInterrupts();
    pinMode(pin, OUTPUT);
    delayMicroseconds(2);
    pinMode(pin, INPUT);
    delayMicroseconds(2);
    const bool one = digitalRead(pin) == HIGH;  // within 15 us of the fall
    interrupts();
    delayMicroseconds(58);
    return one;
  }

  // Speaks to one sensor, after a reset.
  void select(const byte address[8]) {
    write(0x55);
    for (byte at = 0; at < 8; at++) write(address[at]);
  }

  // How many sensors answer with a sound number, in the order of their numbers. Each round reads one number
  // bit by bit; where sensors differ it turns to 0 first, and the next round comes back for the 1.
  byte search(byte addresses[][8], byte most) {
    byte address[8] = {0};
    byte count = 0;
    int lastFork = -1;
    for (byte round = 0; round < 2 * most && count < most; round++) {
      if (!reset()) return count;
      write(0xF0);
      int fork = -1;
      for (int at = 0; at < 64; at++) {
        const bool noneHasZero = readBit();
        const bool noneHasOne = readBit();
        if (noneHasZero && noneHasOne) return count;  // nobody answers any more
        bool turn = noneHasZero;
        if (noneHasZero == noneHasOne) {
          turn = at < lastFork ? bitRead(address[at / 8], at % 8) : at == lastFork;
          if (!turn) fork = at;
        }
        bitWrite(address[at / 8], at % 8, turn);
        writeBit(turn);
      }
      if (crc8(address, 7) == address[7]) memcpy(addresses[count++], address, 8);
      if (fork < 0) return count;
      lastFork = fork;
    }
    return count;
  }

  // x^8 + x^5 + x^4 + 1, lowest bit first.
  static byte crc8(const byte *bytes, byte count) {
    byte crc = 0;
    while (count--) {
      crc ^= *bytes++;
      for (byte bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >> 1) ^ 0x8C : crc >> 1;
    }
    return crc;
  }

 private:
  const byte pin;

  void writeBit(bool one) {
    noInterrupts();
    pinMode(pin, OUTPUT);
    delayMicroseconds(one ? 4 : 62);
    pinMode(pin, INPUT);
    interrupts();
    delayMicroseconds(one ? 62 : 4);
  }
};
