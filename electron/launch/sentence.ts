/** Something the person at the keyboard can put right; its message is a plain sentence for them. */
export class PlainRefusal extends Error {
  readonly code: string;
  readonly exitCode: number;

  constructor(code: string, sentence: string, exitCode = 1) {
    super(sentence);
    this.name = 'PlainRefusal';
    this.code = code;
    this.exitCode = exitCode;
  }
}
