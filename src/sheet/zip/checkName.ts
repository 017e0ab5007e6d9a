import { FileProblem } from './fileProblem.js';

/** Refuses a name that could lead out of the archive or be read in two ways. */
export function checkName(name: string): void {
  if (name === '' || hasControlCharacter(name) || name.includes('\\') || leadsOut(name)) {
    throw new FileProblem(
      `The file was tampered with: its archive has a part named ${JSON.stringify(name.slice(0, 60))}, and no workbook has one like it.`,
    );
  }
}

function leadsOut(name: string): boolean {
  return (
    name.startsWith('/') || /^[A-Za-z]:/.test(name) || name.split('/').some((step) => step === '..' || step === '.')
  );
}

function hasControlCharacter(name: string): boolean {
  for (let i = 0; i < name.length; i++) if (name.charCodeAt(i) < 32) return true;
  return false;
}
