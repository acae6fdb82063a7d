/** What is wrong with a text that is longer than the store takes; nothing is cut off without a word. */
export const tooLong = (text: string, most: number): string | undefined =>
  text.length > most
    ? `That is ${text.length.toLocaleString('en')} characters, and ${most.toLocaleString('en')} are kept. Shorten it by ${(text.length - most).toLocaleString('en')}.`
    : undefined;
