/** Long enough for the browser to have taken the bytes over. [ms] */
const kept = 60_000;

/** Hands bytes to the person as a file of their browser's downloads. */
export function download(bytes: Uint8Array, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), kept);
}
