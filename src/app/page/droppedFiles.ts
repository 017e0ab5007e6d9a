/** Takes files that are dropped anywhere on the page, and shows while one is held over it that it may be. */
export function droppedFiles(dropped: (file: File) => void): void {
  const isFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') === true;
  // Caught on the way down: the grid takes drops as well.
  const listen = (type: 'dragover' | 'dragleave' | 'drop', act: (event: DragEvent) => void): void =>
    window.addEventListener(
      type,
      (event) => {
        if (!isFile(event)) return;
        event.preventDefault();
        event.stopPropagation();
        act(event);
      },
      { capture: true },
    );
  listen('dragover', () => (document.body.dataset['dragging'] = 'yes'));
  listen('dragleave', (event) => {
    if (event.relatedTarget === null) delete document.body.dataset['dragging'];
  });
  listen('drop', (event) => {
    delete document.body.dataset['dragging'];
    const [file] = event.dataTransfer?.files ?? [];
    if (file !== undefined) dropped(file);
  });
}
