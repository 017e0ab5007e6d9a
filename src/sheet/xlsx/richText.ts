/** The plain text of formatted text: what stands in `<t>`, without the reading aids in `<rPh>`. */
export class RichText {
  text = '';
  #inText = false;
  #aloud = 0;

  open(element: string): void {
    if (element === 't') this.#inText = this.#aloud === 0;
    else if (element === 'rPh') this.#aloud++;
  }

  add(text: string): void {
    if (this.#inText) this.text += text;
  }

  close(element: string): void {
    if (element === 't') this.#inText = false;
    else if (element === 'rPh') this.#aloud--;
  }
}
