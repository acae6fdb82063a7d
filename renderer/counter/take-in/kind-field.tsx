import {
  type ComboboxItem,
  type ComboboxItemGroup,
  type OptionsFilter,
  Select,
} from '@mantine/core';
import { type KeyboardEvent, useRef } from 'react';
import type { MachineKind } from '../../../shared/work/vocabulary.ts';
import { KINDS, kindsLike } from './kinds-like.ts';

const isItem = (
  option: ComboboxItem<MachineKind> | ComboboxItemGroup<ComboboxItem<MachineKind>>,
): option is ComboboxItem<MachineKind> => 'value' in option;

const byFirstLetters: OptionsFilter<MachineKind> = ({ options, search }) =>
  kindsLike(options.filter(isItem), search);

interface KindFieldProps {
  value: MachineKind | null;
  onChange: (kind: MachineKind | null) => void;
  error?: string;
  onEnter: (event: KeyboardEvent<HTMLInputElement>) => void;
}

/** The kind by its first letters; leaving the field takes what is highlighted. */
export function KindField({ value, onChange, error, onEnter }: KindFieldProps) {
  const typed = useRef('');
  return (
    <Select<MachineKind>
      label="Kind"
      data-field="kind"
      required
      placeholder="ti, mo, ge …"
      data={KINDS}
      value={value}
      onChange={(kind) => onChange(kind)}
      searchable
      selectFirstOptionOnChange
      autoSelectOnBlur
      openOnFocus={false}
      allowDeselect={false}
      filter={byFirstLetters}
      nothingFoundMessage="No such kind; ‘other’ takes the rest"
      error={error}
      onInput={(event) => {
        typed.current = event.currentTarget.value;
      }}
      onOptionSubmit={() => {
        typed.current = '';
      }}
      // Fast hands leave the field before the list has highlighted anything.
      onBlur={() => {
        const [first] = typed.current === '' ? [] : kindsLike(KINDS, typed.current);
        typed.current = '';
        if (first !== undefined) onChange(first.value);
      }}
      onKeyDownCapture={(event) => {
        if (event.key === 'Enter') onEnter(event);
      }}
    />
  );
}
