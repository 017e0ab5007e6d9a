import type { Page } from 'playwright-core';

/** Until the line beside the buttons says what came of a file. */
async function settled(page: Page, name: string): Promise<void> {
  await page.waitForFunction((file) => {
    const line = document.getElementById('file-line')?.textContent ?? '';
    return document.body.dataset['busy'] === undefined && line.startsWith(file);
  }, name);
}

export async function openFile(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  await page.evaluate(() => document.getElementById('file-line')?.replaceChildren());
  await page.setInputFiles('#open-input', { name, mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) });
  await settled(page, name);
}

/** Drags a file over the page and drops it. */
export async function dropFile(page: Page, name: string, text: string): Promise<void> {
  const hint = await page.evaluateHandle(
    ([file, content]) => {
      const data = new DataTransfer();
      data.items.add(new File([content], file));
      return data;
    },
    [name, text] as const,
  );
  await page.evaluate(() => document.getElementById('file-line')?.replaceChildren());
  await page.dispatchEvent('#sheet', 'dragover', { dataTransfer: hint });
  if (!(await page.isVisible('#drop-hint')))
    throw new Error('a file over the page, and no hint that it may be dropped');
  await page.dispatchEvent('#sheet', 'drop', { dataTransfer: hint });
  if (await page.isVisible('#drop-hint')) throw new Error('the hint stays after the drop');
  await settled(page, name);
}

export async function fileLine(page: Page): Promise<string> {
  return (await page.locator('#file-line').innerText()).trim();
}

/** Saves a copy and takes it from the downloads. */
export async function savedFile(page: Page): Promise<{ name: string; bytes: Uint8Array }> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save-button')]);
  const chunks: Uint8Array[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Uint8Array);
  return { name: download.suggestedFilename(), bytes: new Uint8Array(Buffer.concat(chunks)) };
}
