import { Select, type SelectProps } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { useState } from 'react';
import { PartId } from '../../shared/contract/ids.ts';
import { useFoundParts } from './find-parts.ts';

interface PartFieldProps
  extends Pick<SelectProps, 'label' | 'description' | 'error' | 'flex' | 'placeholder'> {
  value: PartId | null;
  onChange: (partId: PartId | null) => void;
  /** A part that can't be meant. */
  without?: PartId;
}

/** Chooses a part by any of its numbers or by its name. */
export function PartField({ value, onChange, without, ...input }: PartFieldProps) {
  const [typed, setTyped] = useState('');
  const [text] = useDebouncedValue(typed, 150);
  // The chosen part's own label stands in the field: searching by it would find nothing.
  const query = useFoundParts(text.split(' · ')[0] ?? '', 20);
  return (
    <Select
      placeholder="Number or name"
      {...input}
      searchable
      selectFirstOptionOnChange
      clearable
      clearButtonProps={{ 'aria-label': 'Choose another part' }}
      nothingFoundMessage="No part goes with that."
      data={(query.data ?? [])
        .filter(({ id }) => id !== without)
        .map((part) => ({ value: part.id, label: `${part.number} · ${part.description}` }))}
      filter={({ options }) => options}
      value={value}
      onSearchChange={setTyped}
      onChange={(id) => onChange(id === null ? null : PartId.parse(id))}
    />
  );
}
