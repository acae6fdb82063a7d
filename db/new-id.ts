import { randomBytes, randomInt } from 'node:crypto';

/** Bits of the counter that keeps ids of one millisecond in their order. */
const COUNTER_BITS = 12;

let lastMillisecond = -1;
let counter = 0;

/**
 * A UUID version 7 (RFC 9562, section 5.7): the instant in milliseconds, a counter in the twelve bits
 * after it (section 6.2, method 1), then random bits. Ids that one process makes sort as they were made,
 * within a millisecond too; two papers of one call keep their order by it.
 */
export function newId(now: Date): string {
  const millisecond = now.getTime();
  if (millisecond === lastMillisecond) {
    counter += 1;
    if (counter >= 2 ** COUNTER_BITS)
      throw new RangeError(
        'More ids were asked for in one millisecond than there are numbers for.',
      );
  } else {
    lastMillisecond = millisecond;
    // Begun low, so that there is room to count up.
    counter = randomInt(2 ** (COUNTER_BITS - 2));
  }
  const bytes = randomBytes(16);
  bytes.writeUIntBE(millisecond, 0, 6);
  bytes.writeUInt16BE(0x7000 | counter, 6);
  bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8);
  const hex = bytes.toString('hex');
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    hex.slice(12, 16),
    hex.slice(16, 20),
    hex.slice(20),
  ].join('-');
}
