const known = new Map<string, boolean>();
const size = '40px';
const sample = 'mmmwwwiiilll 0123456789';

/** Whether this machine has a font: a text in it is then not as wide as in both fonts that stand in for a missing one. */
export function fontOnMachine(name: string): boolean {
  let answer = known.get(name);
  if (answer === undefined) known.set(name, (answer = isThere(name)));
  return answer;
}

function isThere(name: string): boolean {
  const pen = document.createElement('canvas').getContext('2d');
  if (pen === null) return false;
  const width = (fonts: string): number => {
    pen.font = `${size} ${fonts}`;
    return pen.measureText(sample).width;
  };
  return ['monospace', 'serif'].some((other) => width(`"${name}", ${other}`) !== width(other));
}
