import {
  type ComboboxItem,
  type ComboboxItemGroup,
  type OptionsFilter,
  Select,
} from '@mantine/core';
import { type KeyboardEvent, useRef, useState } from 'react';
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
  const [missed, setMissed] = useState('');
  return (
    <Select<MachineKind>
      label="Kind"
      data-field="kind"
      required
      placeholder="Type its first letters"
      data={KINDS}
      value={value}
      onChange={(kind) => {
        setMissed('');
        onChange(kind);
      }}
      searchable
      selectFirstOptionOnChange
      autoSelectOnBlur
      openOnFocus={false}
      allowDeselect={false}
      filter={byFirstLetters}
      nothingFoundMessage="Nothing on the list begins so: choose Other machine"
      error={
        missed === ''
          ? error
          : `“${missed}” is no kind on the list. Choose one, or “other” for the rest.`
      }
      onInput={(event) => {
        typed.current = event.currentTarget.value;
        setMissed('');
      }}
      onOptionSubmit={() => {
        typed.current = '';
      }}
      // Fast hands leave the field before the list has highlighted anything.
      onBlur={() => {
        const wanted = typed.current.trim();
        const [first] = wanted === '' ? [] : kindsLike(KINDS, wanted);
        typed.current = '';
        setMissed(first === undefined ? wanted : '');
        if (first !== undefined) onChange(first.value);
      }}
      onKeyDownCapture={(event) => {
        if (event.key !== 'Enter') return;
        const wanted = typed.current.trim();
        // What is no kind is not left behind without a word.
        if (wanted !== '' && kindsLike(KINDS, wanted).length === 0) {
          event.preventDefault();
          event.stopPropagation();
          setMissed(wanted);
        } else onEnter(event);
      }}
    />
  );
}
