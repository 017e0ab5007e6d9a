/** The names of elements and attributes with the prefixes a reader knows, whatever the file calls its namespaces. */
export class XmlNames {
  readonly #scopes: { readonly depth: number; readonly uris: ReadonlyMap<string, string> }[] = [];
  /** Names met under the present declarations. */
  #met = new Map<string, string>();

  constructor(private readonly prefixes: ReadonlyMap<string, string>) {}

  /** An element that declares namespaces, at this depth; they hold until it closes. */
  declare(depth: number, attributes: Readonly<Record<string, string>>): void {
    const uris = new Map<string, string>();
    for (const name in attributes) {
      if (name === 'xmlns') uris.set('', attributes[name] ?? '');
      else if (name.startsWith('xmlns:')) uris.set(name.slice(6), attributes[name] ?? '');
    }
    this.#scopes.push({ depth, uris });
    this.#met = new Map();
  }

  closed(depth: number): void {
    if (this.#scopes[this.#scopes.length - 1]?.depth !== depth) return;
    this.#scopes.pop();
    this.#met = new Map();
  }

  element(name: string): string {
    let known = this.#met.get(name);
    if (known === undefined) this.#met.set(name, (known = this.#known(name)));
    return known;
  }

  /** Attributes without a prefix belong to their element and keep their names. */
  attributes(given: Readonly<Record<string, string>>): Record<string, string> {
    const known: Record<string, string> = Object.create(null);
    for (const name in given) known[name.includes(':') ? this.element(name) : name] = given[name] ?? '';
    return known;
  }

  #known(name: string): string {
    const colon = name.indexOf(':');
    const uri = this.#uri(colon < 0 ? '' : name.slice(0, colon)) ?? (colon < 0 ? '' : 'unknown');
    const prefix = uri === '' ? '' : (this.prefixes.get(uri) ?? 'other');
    const local = name.slice(colon + 1);
    return prefix === '' ? local : `${prefix}:${local}`;
  }

  #uri(prefix: string): string | undefined {
    for (let scope = this.#scopes.length - 1; scope >= 0; scope--) {
      const uri = this.#scopes[scope]?.uris.get(prefix);
      if (uri !== undefined) return uri;
    }
    return undefined;
  }
}
