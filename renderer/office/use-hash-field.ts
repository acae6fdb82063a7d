import { useEffect } from 'react';
import { useLocation } from 'react-router';

/** Brings the focus to the field that the address names after its `#`, once the page is there. */
export function useHashField(): void {
  const wanted = useLocation().hash.slice(1);
  useEffect(() => {
    const field = wanted === '' ? null : document.getElementById(wanted);
    field?.focus();
    field?.scrollIntoView({ block: 'center' });
  }, [wanted]);
}
