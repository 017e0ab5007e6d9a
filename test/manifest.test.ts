import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { JSDOM } from 'jsdom';
import { validateXML } from 'xmllint-wasm';

const text = readFileSync('manifest.xml', 'utf8');
const manifest = new JSDOM(text, { contentType: 'application/xml' }).window.document;
const root = manifest.documentElement;
const all = (name: string): Element[] => [...manifest.getElementsByTagName('*')].filter((e) => e.localName === name);
const children = (element: Element | undefined): string[] =>
  [...(element?.children ?? [])].map((child) => child.localName);
const resources = new Map(
  ['Image', 'Url', 'String'].flatMap(all).map((e) => [e.id, e.getAttribute('DefaultValue') ?? '']),
);
const values = [...manifest.getElementsByTagName('*')].map((e) => e.getAttribute('DefaultValue') ?? '');

/** The order of the schema; a host refuses another one. */
const order = [
  'Id Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl',
  'Hosts Requirements DefaultSettings Permissions VersionOverrides',
].flatMap((line) => line.split(' '));

describe('manifest.xml', () => {
  it('is well-formed', async () => {
    const checked = await validateXML({ xml: text, normalization: 'format' });
    expect(checked.errors).toEqual([]);
    expect(checked.valid).toBe(true);
  });

  it('is read by the manifest tool: name, version, host, permission', () => {
    const tool = resolve('node_modules/office-addin-manifest/cli.js');
    const lines = execFileSync(process.execPath, [tool, 'info', 'manifest.xml'], { encoding: 'utf8' }).split('\n');
    const info = new Map(lines.map((line) => [line.split(':')[0]?.trim(), line.slice(line.indexOf(':') + 1).trim()]));
    expect(info.get('Name')).toBe('Lazaret');
    expect(info.get('Type')).toBe('TaskPaneApp');
    expect(info.get('Hosts')).toBe('Workbook');
    expect(info.get('Permissions')).toBe('ReadDocument');
    expect(info.get('Version')).toBe(`${JSON.parse(readFileSync('package.json', 'utf8')).version}.0`);
    expect(info.get('Id')).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  });

  it('has its elements in the order of the schema', () => {
    expect(root.localName).toBe('OfficeApp');
    expect(children(root)).toEqual(order);
    expect(children(all('VersionOverrides')[0])).toEqual(['Hosts', 'Resources']);
    expect(children(all('AllFormFactors')[0])).toEqual(['ExtensionPoint']);
    expect(children(all('ExtensionPoint')[0])).toEqual(['Script', 'Page', 'Metadata', 'Namespace']);
    expect(children(all('Resources')[0])).toEqual(['Images', 'Urls', 'ShortStrings']);
  });

  it('asks for the custom functions runtime 1.1, in a runtime of its own', () => {
    const sets = all('Set').map((set) => [set.getAttribute('Name'), set.getAttribute('MinVersion')]);
    expect(sets).toEqual([['CustomFunctionsRuntime', '1.1']]);
    expect(all('Runtimes')).toEqual([]);
    expect(all('ExtensionPoint').map((e) => e.getAttribute('xsi:type'))).toEqual(['CustomFunctions']);
  });

  it('has resource ids that are unique, resolve, are used, and are at most 32 characters long', () => {
    const defined = ['Image', 'Url', 'String'].flatMap(all).map((e) => e.id);
    const used = [...manifest.querySelectorAll('[resid]')].map((e) => e.getAttribute('resid') ?? '');
    expect(used.length).toBe(4);
    expect(new Set(defined).size).toBe(defined.length);
    for (const id of used) expect(resources.get(id)).toBeTruthy();
    for (const id of [...defined, ...used]) expect(id.length).toBeLessThanOrEqual(32);
  });

  it('calls the namespace QT', () => {
    const id = all('Namespace')[0]?.getAttribute('resid') ?? '';
    expect(resources.get(id)).toBe('QT');
  });

  it('names only files of this server that the build emits', () => {
    const urls = values.filter((value) => value.includes(':'));
    expect(urls.length).toBeGreaterThan(8);
    for (const url of urls) {
      expect(url).toMatch(/^https:\/\/localhost:3000\/[a-z0-9-]+\.(html|js|json|png)$/);
      const file = resolve('dist', new URL(url).pathname.slice(1));
      expect([url, existsSync(file) && statSync(file).size > 0]).toEqual([url, true]);
    }
    expect(readFileSync(resolve('dist/manifest.xml'), 'utf8')).toBe(text);
  });

  it('has icons of the sizes that their names say', () => {
    for (const size of [16, 32, 64, 80, 128]) {
      const png = readFileSync(resolve(`dist/icon-${size}.png`));
      expect(png.subarray(1, 4).toString()).toBe('PNG');
      expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([size, size]);
    }
  });
});
