/** The plain text of a run of formatted text: what stands in `<t>`, without the reading aids in `<rPh>`. */
export class RichText {
  text = '';
  private readonly open: string[] = [];

  opened(name: string): void {
    this.open.push(name);
  }

  closed(): void {
    this.open.pop();
  }

  add(text: string): void {
    if (this.open[this.open.length - 1] === 't' && !this.open.includes('rPh')) this.text += text;
  }
}
