/**
 * The cyclic redundancy check CRC-32 of ISO/IEC 8802-3: it finds every change of up to 32 bits in
 * a row. Of the digits 1 to 9 it is CBF43926, the published check value.
 */
export function crc32(bytes: readonly number[]): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}
