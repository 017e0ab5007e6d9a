import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer, request, type IncomingHttpHeaders, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileOfRequest } from '../../../src/app/serve/fileOfRequest.js';
import { host, listenOnFreePort } from '../../../src/app/serve/listenOnFreePort.js';
import { staticServer } from '../../../src/app/serve/staticServer.js';

let folder: string;
let root: string;
const servers: Server[] = [];

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'serve-'));
  root = join(folder, 'dist');
  mkdirSync(join(root, 'page'), { recursive: true });
  mkdirSync(join(folder, 'dist-other'));
  for (const file of [
    'dist/index.html',
    'dist/functions.json',
    'dist/page/1.js',
    'dist/.hidden',
    'secret.txt',
    'dist-other/a.txt',
  ])
    writeFileSync(join(folder, file), file);
  symlinkSync(join(folder, 'secret.txt'), join(root, 'link.txt'));
});

afterAll(() => rmSync(folder, { recursive: true }));
afterEach(() => servers.splice(0).forEach((server) => server.close()));

async function listening(server: Server, port: number): Promise<number> {
  servers.push(server);
  return listenOnFreePort(server, port);
}

/** A port that was free a moment ago. */
async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, host, done));
  const { port } = server.address() as AddressInfo;
  await new Promise((done) => server.close(done));
  return port;
}

/** Asks for a path exactly as written: `fetch` would tidy it first. */
function ask(
  port: number,
  path: string,
  method = 'GET',
): Promise<{ status: number; headers: IncomingHttpHeaders; body: string }> {
  return new Promise((done, failed) => {
    request({ host, port, path, method }, (response) => {
      let body = '';
      response.on('data', (chunk: Buffer) => (body += chunk.toString()));
      response.on('end', () => done({ status: response.statusCode ?? 0, headers: response.headers, body }));
    })
      .on('error', failed)
      .end();
  });
}

describe('fileOfRequest', () => {
  it.each([
    ['/', 'index.html'],
    ['/index.html?x=1#y', 'index.html'],
    ['/page/1.js', 'page/1.js'],
    ['/page%2F1.js', 'page/1.js'],
  ])('finds %s', (path, file) => {
    expect(fileOfRequest(root, path)).toBe(join(root, file));
  });

  it.each([
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/page/../../secret.txt',
    '/..\\secret.txt',
    '/../dist-other/a.txt',
    '//etc/passwd',
    '/link.txt',
    '/.hidden',
    '/page',
    '/%00',
    '/%E0%A4%A',
    '/nothing',
  ])('refuses %s', (path) => {
    expect(fileOfRequest(root, path)).toBeUndefined();
  });
});

describe('staticServer', () => {
  it('gives a file with its type and a policy that forbids other origins', async () => {
    const port = await listening(staticServer(root), await freePort());
    const page = await ask(port, '/');
    expect(page).toMatchObject({ status: 200, body: 'dist/index.html' });
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
    expect(page.headers['content-security-policy']).toMatch(/^default-src 'self';/);
    expect((await ask(port, '/functions.json')).headers['content-type']).toBe('application/json; charset=utf-8');
    expect((await ask(port, '/page/1.js')).headers['content-type']).toBe('text/javascript; charset=utf-8');
  });

  it('gives nothing outside its folder, and takes nothing', async () => {
    const port = await listening(staticServer(root), await freePort());
    for (const path of ['/../secret.txt', '/..%2fsecret.txt', '/link.txt']) {
      expect(await ask(port, path)).toMatchObject({ status: 404, body: 'not found' });
    }
    expect((await ask(port, '/', 'POST')).status).toBe(405);
    expect(await ask(port, '/', 'HEAD')).toMatchObject({ status: 200, body: '' });
  });
});

describe('listenOnFreePort', () => {
  it('takes the next port when the wanted one is taken, on this machine alone', async () => {
    const wanted = await freePort();
    expect(await listening(staticServer(root), wanted)).toBe(wanted);
    const second = staticServer(root);
    const port = await listening(second, wanted);
    expect(port).toBeGreaterThan(wanted);
    expect((second.address() as AddressInfo).address).toBe('127.0.0.1');
    expect((await ask(port, '/')).status).toBe(200);
  });

  it('says so when no port is left', async () => {
    const wanted = 65_535;
    await listening(createServer(), wanted).catch(() => undefined);
    await expect(listening(createServer(), wanted)).rejects.toThrow(/no free port from 65535 on/);
  });
});
