import { extname } from 'node:path';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
};

/** The content type of a file by its name; what is not known is handed over as bytes. */
export function contentType(file: string): string {
  return types[extname(file).toLowerCase()] ?? 'application/octet-stream';
}
