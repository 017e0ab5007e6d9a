import { element } from './element.js';

/** The buttons of new workbooks, each where the server has its template. */
export function offerTemplates(open: (file: { name: string; bytes: Uint8Array }) => void): void {
  for (const kind of ['tank', 'shop']) {
    const button = element(`template-${kind}`);
    const [address, name] = [`templates/${kind}.xlsx`, `${kind}.xlsx`];
    void fetch(address, { method: 'HEAD' }).then(({ ok }) => (button.hidden = !ok));
    button.addEventListener('click', () => {
      void fetch(address)
        .then((response) => response.arrayBuffer())
        .then((buffer) => open({ name, bytes: new Uint8Array(buffer) }));
    });
  }
}
