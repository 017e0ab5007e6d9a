import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const places = [
  '/usr/bin/soffice',
  '/usr/local/bin/soffice',
  '/usr/lib/libreoffice/program/soffice',
  '/opt/libreoffice/program/soffice',
  '/snap/bin/libreoffice',
  '/Applications/LibreOffice.app/Contents/MacOS/soffice',
  'C:\\Program Files\\LibreOffice\\program\\soffice.exe',
];

/** LibreOffice of this machine: SOFFICE names it, else it is looked for in the usual places. */
export const soffice = [process.env['SOFFICE'] ?? '', ...places].find((place) => place !== '' && existsSync(place));

/**
 * Tests that need LibreOffice. Without it they fail on a build machine (CI=true); on a person's machine they are
 * reported as skipped, with the reason in their name.
 */
export function whereOffice(name: string, tests: () => void): void {
  if (soffice !== undefined) describe(name, tests);
  else if (process.env['CI'] === 'true') {
    describe(name, () => {
      it('finds LibreOffice', () => {
        throw new Error('LibreOffice is not installed, and CI must run these tests: apt-get install libreoffice-calc');
      });
    });
  } else xdescribe(`${name} (no LibreOffice on this machine; install it, or name it in SOFFICE)`, tests);
}

interface Conversion {
  readonly from: string;
  /** May carry a filter, such as `xlsx:Calc MS Excel 2007 XML`. */
  readonly to: string;
}

/** A file as LibreOffice converts it, such as `{ from: 'xlsx', to: 'ods' }`. */
export function converted(bytes: Uint8Array, by: Conversion): Uint8Array {
  return allConverted([bytes], by)[0] ?? new Uint8Array();
}

/**
 * Several files of one kind, in one start of LibreOffice, which takes longer than a conversion. Each call has its own
 * profile, so that several can run at once.
 */
export function allConverted(files: readonly Uint8Array[], { from, to }: Conversion): Uint8Array[] {
  if (soffice === undefined) throw new Error('no LibreOffice on this machine');
  const folder = mkdtempSync(join(tmpdir(), 'lazaret-office-'));
  try {
    const paths = files.map((bytes, i) => {
      const path = join(folder, `book${i}.${from}`);
      writeFileSync(path, bytes);
      return path;
    });
    const profile = `-env:UserInstallation=${pathToFileURL(join(folder, 'profile')).href}`;
    const out = join(folder, 'out');
    execFileSync(soffice, [profile, '--headless', '--convert-to', to, '--outdir', out, ...paths], {
      stdio: 'pipe',
      timeout: 120_000,
    });
    const ending = to.split(':')[0] ?? '';
    return files.map((_, i) => new Uint8Array(readFileSync(join(out, `book${i}.${ending}`))));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
