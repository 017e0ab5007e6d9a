import type { Server } from 'node:http';

/** This machine only. */
export const host = '127.0.0.1';

const attempts = 50;

/** Listens on `port`, or on the next one that is free. @returns the port. */
export async function listenOnFreePort(server: Server, port: number): Promise<number> {
  for (let candidate = port; candidate < port + attempts && candidate <= 65_535; candidate++) {
    if (await listens(server, candidate)) return candidate;
  }
  throw new Error(`no free port from ${port} on`);
}

function listens(server: Server, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const failed = (error: NodeJS.ErrnoException): void => {
      if (error.code === 'EADDRINUSE') resolve(false);
      else reject(error);
    };
    server.once('error', failed);
    server.listen(port, host, () => {
      server.off('error', failed);
      resolve(true);
    });
  });
}
