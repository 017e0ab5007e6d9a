import { host, listenOnFreePort } from './listenOnFreePort.js';
import { staticServer } from './staticServer.js';

async function main(): Promise<void> {
  const wanted = process.env['PORT'] ?? '3000';
  if (!/^\d{1,5}$/.test(wanted) || Number(wanted) < 1 || Number(wanted) > 65_535)
    throw new Error(`PORT is "${wanted}"; write a number from 1 to 65535`);
  const port = await listenOnFreePort(staticServer(__dirname), Number(wanted));
  console.log(`Lazaret is at http://${host}:${port}/  (Ctrl+C stops it)`);
}

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
