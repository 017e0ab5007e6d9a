import { realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';

/**
 * The file in `root` a request path names, or undefined. Nothing outside `root` is ever named: not by `..` in any spelling,
 * not by a link that leads out, not by a hidden file.
 */
export function fileOfRequest(root: string, requestUrl: string): string | undefined {
  const parts = pathParts(requestUrl);
  if (parts === undefined) return undefined;
  try {
    const home = realpathSync(root);
    const file = realpathSync(join(home, ...(parts.length === 0 ? ['index.html'] : parts)));
    return file.startsWith(home + sep) && statSync(file).isFile() ? file : undefined;
  } catch {
    return undefined;
  }
}

function pathParts(requestUrl: string): string[] | undefined {
  const [path = ''] = requestUrl.split(/[?#]/, 1);
  try {
    const parts = decodeURIComponent(path)
      .split('/')
      .filter((part) => part !== '');
    return parts.some((part) => part.startsWith('.') || /[\\\0:]/.test(part)) ? undefined : parts;
  } catch {
    return undefined;
  }
}
