import { useState } from 'react';

/**
 * The text of a field whose form holds what the text means. A value that the form sets of its own
 * (cleared, filled from elsewhere) replaces the text. What the form makes of a key press does not: where
 * an empty field counts as nought, it could never be emptied otherwise.
 * @param written the value as one would type it
 * @returns `type` for a key press; `tidy` writes the value out when the field is left, and gives way to one
 *   that the form sets at that very moment
 */
export function useTyped<V>(
  value: V,
  written: string,
): { typed: string; type: (text: string) => void; tidy: () => void } {
  const [typed, setTyped] = useState(written);
  const [seen, setSeen] = useState({ typed, value });
  if (typed !== seen.typed) {
    setSeen({ typed, value });
  } else if (!Object.is(value, seen.value)) {
    setTyped(written);
    setSeen({ typed: written, value });
  }
  const tidy = () => {
    setTyped(written);
    setSeen({ typed: written, value });
  };
  return { typed, type: setTyped, tidy };
}
