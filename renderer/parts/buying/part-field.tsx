import { Select } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { useState } from 'react';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { useFoundParts } from '../find-parts.ts';

interface PartFieldProps {
  label: string;
  value: Part | null;
  onChange: (part: Part | null) => void;
  error?: string | undefined;
}

const SHOWN = 20;

/** Chooses a part by any of its numbers or a word of its name. */
export function PartField({ label, value, onChange, error }: PartFieldProps) {
  const [typed, setTyped] = useState('');
  const [text] = useDebouncedValue(typed, 150);
  // The chosen part's own label stands in the field: searching by it would find nothing.
  const query = useFoundParts(text.split(' · ')[0] ?? '', SHOWN);
  const found = query.data ?? [];
  const shown =
    value === null || found.some(({ id }) => id === value.id) ? found : [value, ...found];
  return (
    <Select
      label={label}
      placeholder="Number, name or barcode"
      searchable
      selectFirstOptionOnChange
      clearable
      clearButtonProps={{ 'aria-label': 'Choose another part' }}
      nothingFoundMessage="No part goes with that. Add it on the shelf first."
      data={shown.map(({ id, number, description }) => ({
        value: id,
        label: `${number} · ${description}`,
      }))}
      filter={({ options }) => options}
      value={value?.id ?? null}
      error={error}
      onSearchChange={setTyped}
      onChange={(id) => onChange(shown.find((part) => part.id === id) ?? null)}
    />
  );
}
