/** `past.xlsx` as `past copy.xlsx`. */
export function copyName(name: string, extension?: string): string {
  const dot = name.lastIndexOf('.');
  const stem = dot > 0 ? name.slice(0, dot) : name;
  const own = dot > 0 ? name.slice(dot) : '.xlsx';
  return `${stem} copy${extension ?? own}`;
}
