import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';

export interface RunningServer {
  readonly address: string;
  stop(): void;
}

/** `node dist/serve.js`, as `npm start` runs it; the address is read from what it prints. */
export async function runningServer(port = 3300): Promise<RunningServer> {
  const script = resolve('dist/serve.js');
  if (!existsSync(script) || !existsSync(resolve('dist/page.js')))
    throw new Error('dist is not complete: npm run build');
  const child = spawn(process.execPath, [script], { env: { ...process.env, PORT: String(port) } });
  const address = await printedAddress(child);
  return { address, stop: () => child.kill() };
}

function printedAddress(child: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let printed = '';
    const read = (chunk: Buffer): void => {
      printed += chunk.toString();
      const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed)?.[0];
      if (address !== undefined) found(address);
    };
    child.stdout?.on('data', read);
    child.stderr?.on('data', read);
    child.once('exit', (code) => failed(new Error(`the server ended with ${code}: ${printed}`)));
  });
}
