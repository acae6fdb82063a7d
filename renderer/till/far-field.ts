import { useId, useMemo } from 'react';

/** A field that another part of the page brings the focus to. */
export interface FarField {
  id: string;
  focus: () => void;
}

/** Give the field the id, and whoever wants it there the function. */
export function useFarField(): FarField {
  const id = useId();
  return useMemo(() => ({ id, focus: () => document.getElementById(id)?.focus() }), [id]);
}
