import { createReadStream } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { contentType } from './contentType.js';
import { fileOfRequest } from './fileOfRequest.js';

/** The page may load from its own origin and nowhere else. The sheet component sets styles and draws images in place. */
const contentSecurityPolicy =
  "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self' data:; " +
  "connect-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** A server for the files of one folder: GET and HEAD, nothing else. */
export function staticServer(root: string): Server {
  return createServer((request, response) => answer(root, request, response));
}

function answer(root: string, request: IncomingMessage, response: ServerResponse): void {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { Allow: 'GET, HEAD' }).end();
    return;
  }
  const file = fileOfRequest(root, request.url ?? '/');
  if (file === undefined) {
    response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end('not found');
    return;
  }
  response.writeHead(200, {
    'Content-Type': contentType(file),
    'Content-Security-Policy': contentSecurityPolicy,
    'X-Content-Type-Options': 'nosniff',
    'Referrer-Policy': 'no-referrer',
    'Cache-Control': 'no-cache',
  });
  if (request.method === 'HEAD') response.end();
  else
    createReadStream(file)
      .on('error', () => response.destroy())
      .pipe(response);
}
