import { expect, test } from 'vitest';
import { crc32 } from './crc32.ts';

// The check value of CRC-32/ISO-HDLC, as catalogues of such checks publish it (from memory).
test('the checksum of the digits 1 to 9 is the published CBF43926', () => {
  expect(crc32(Array.from('123456789', (digit) => digit.charCodeAt(0)))).toBe(0xcbf43926);
});
