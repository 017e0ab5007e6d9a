import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { gzipSync } from 'node:zlib';

const bundle = readFileSync(resolve('dist/functions.js'), 'utf8');

describe('dist/functions.js', () => {
  it('is at most 60 kB gzipped', () => {
    expect(bundle.length).toBeGreaterThan(1000);
    expect(gzipSync(bundle, { level: 9 }).length).toBeLessThanOrEqual(60_000);
  });

  it('asks for nothing that the host lacks and sends nothing anywhere', () => {
    const foreign =
      /\b(fetch|XMLHttpRequest|WebSocket|localStorage|indexedDB|document|window|setTimeout|process|require|eval)\s*[.(]/g;
    expect([...bundle.matchAll(foreign)].map((match) => match[0])).toEqual([]);
  });

  it('reads no clock and draws no random number', () => {
    expect([...bundle.matchAll(/\bnew Date\b|\bDate\.|Math\.random|performance\./g)].map((match) => match[0])).toEqual(
      [],
    );
  });
});
