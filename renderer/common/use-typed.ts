import { useState } from 'react';

/**
 * The text of a field whose form holds what the text means. A value that the form sets of its own
 * (cleared, filled from elsewhere) replaces the text. What the form makes of a key press does not: where
 * an empty field counts as nought, it could never be emptied otherwise.
 * @param written the value as one would type it
 */
export function useTyped<V>(
  value: V,
  written: string,
): [typed: string, setTyped: (typed: string) => void] {
  const [typed, setTyped] = useState(written);
  const [seen, setSeen] = useState({ typed, value });
  if (typed !== seen.typed) {
    setSeen({ typed, value });
  } else if (!Object.is(value, seen.value)) {
    setTyped(written);
    setSeen({ typed: written, value });
  }
  return [typed, setTyped];
}
