type StructureElement = ReturnType<PDFKit.PDFDocument['struct']>;

/**
 * The paper's structure for screen readers and for whoever copies text out of it: each piece of text is
 * marked with what it is, and rules and page furniture as artifacts that are not read aloud.
 */
export class Structure {
  readonly #document: PDFKit.PDFDocument;
  readonly #open: StructureElement[];

  constructor(document: PDFKit.PDFDocument) {
    this.#document = document;
    const root = document.struct('Document');
    document.addStructure(root);
    this.#open = [root];
  }

  /** An element with others in it: a table, a row. */
  group(type: string, draw: () => void) {
    this.#open.push(this.#element(type));
    draw();
    this.#open.pop();
  }

  /** An element with text in it, on the page as it is now. */
  text(type: string, draw: () => void, alternative?: string) {
    const element = this.#element(type, alternative);
    element.add(this.#document.markStructureContent(type));
    draw();
    this.#document.endMarkedContent();
  }

  /** Drawing that says nothing. Never inside `text`. */
  artifact(draw: () => void, kind: 'Layout' | 'Pagination' = 'Layout') {
    this.#document.markContent('Artifact', { type: kind });
    draw();
    this.#document.endMarkedContent();
  }

  #element(type: string, alternative?: string): StructureElement {
    const element =
      alternative === undefined
        ? this.#document.struct(type)
        : this.#document.struct(type, { alt: alternative });
    this.#open.at(-1)?.add(element);
    return element;
  }
}
