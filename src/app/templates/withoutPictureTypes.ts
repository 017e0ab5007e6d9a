import { partOf, zipEntries, zipWith } from '../../sheet/index.js';

const part = '[Content_Types].xml';

/** The workbook without the types of pictures, which it has none of and which the writer names in any order. */
export function withoutPictureTypes(bytes: Uint8Array): Uint8Array {
  const entry = zipEntries(bytes).find(({ name }) => name === part);
  if (entry === undefined) throw new Error(`the workbook has no ${part}`);
  const types = new TextDecoder().decode(partOf(bytes, entry));
  const kept = types.replace(/<Default Extension="(?!xml"|rels")[^>]*><\/Default>/g, '');
  return zipWith(bytes, new Map([[part, new TextEncoder().encode(kept)]]));
}
