const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = (value & 1) === 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/** The checksum of the zip format; `before` is that of the bytes already passed. */
export function crc32(bytes: Uint8Array, before = 0): number {
  let value = ~before;
  for (let i = 0; i < bytes.length; i++) value = (value >>> 8) ^ (table[(value ^ (bytes[i] ?? 0)) & 0xff] ?? 0);
  return ~value >>> 0;
}
