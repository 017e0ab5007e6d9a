/**
 * The add-in's icon, drawn when it is built: a tank in cross-section, its water, and the rising line of a level that
 * reaches its band. Shapes are given on a unit square, so that one drawing serves every size.
 */
const zlib = require('node:zlib');

const glass = [38, 70, 83, 255];
const water = [141, 200, 209, 255];
const band = [231, 244, 240, 255];
const line = [184, 101, 42, 255];
const nothing = [0, 0, 0, 0];

/** The colour of a point of the drawing; x to the right, y down, both 0 to 1. */
function colourAt(x, y) {
  const inside = x > 0.14 && x < 0.86 && y < 0.84;
  if (x < 0.06 || x > 0.94 || y < 0.1 || y > 0.92) return nothing;
  if (!inside) return glass;
  if (y < 0.24) return nothing;
  const level = Math.max(0.42, 0.78 - 0.9 * (x - 0.14));
  if (Math.abs(y - level) < 0.055) return line;
  return y > 0.3 && y < 0.54 ? band : water;
}

/** Sixteen samples a pixel, so that slanting edges are smooth at 16 pixels too. */
function pixelAt(column, row, size) {
  const sum = [0, 0, 0, 0];
  for (let sample = 0; sample < 16; sample++) {
    const x = (column + ((sample % 4) + 0.5) / 4) / size;
    const y = (row + (Math.floor(sample / 4) + 0.5) / 4) / size;
    const [red, green, blue, alpha] = colourAt(x, y);
    sum[0] += red * alpha;
    sum[1] += green * alpha;
    sum[2] += blue * alpha;
    sum[3] += alpha;
  }
  const solid = sum[3] || 1;
  return [sum[0] / solid, sum[1] / solid, sum[2] / solid, sum[3] / 16].map(Math.round);
}

/** A chunk as the PNG specification lays it out: length, type, data, CRC of type and data. */
function chunk(type, data) {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const out = Buffer.alloc(body.length + 8);
  out.writeUInt32BE(data.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc32(body), body.length + 4);
  return out;
}

/** zlib.crc32 came with Node 22; this is the same sum for Node 20. */
function crc32(bytes) {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

/** The icon as the bytes of a PNG file, `size` pixels square. */
function iconPng(size) {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8); // 8 bits a channel, red green blue alpha
  const rows = Buffer.alloc(size * (1 + 4 * size)); // each row begins with its filter: 0, none
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      rows.set(pixelAt(column, row, size), row * (1 + 4 * size) + 1 + 4 * column);
    }
  }
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const parts = [
    chunk('IHDR', header),
    chunk('IDAT', zlib.deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ];
  return Buffer.concat([signature, ...parts]);
}

module.exports = { iconPng };
