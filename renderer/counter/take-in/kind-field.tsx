import {
  type ComboboxItem,
  type ComboboxItemGroup,
  type OptionsFilter,
  Select,
} from '@mantine/core';
import type { KeyboardEvent } from 'react';
import { fold } from '../../../shared/work/fold.ts';
import {
  MACHINE_KIND_LABELS,
  MACHINE_KINDS,
  type MachineKind,
} from '../../../shared/work/vocabulary.ts';

const KINDS = MACHINE_KINDS.map((value) => ({ value, label: MACHINE_KIND_LABELS[value] }));

const isItem = (
  option: ComboboxItem<MachineKind> | ComboboxItemGroup<ComboboxItem<MachineKind>>,
): option is ComboboxItem<MachineKind> => 'value' in option;

/** First letters of the label come first, then those of its second word: 'mo' is Mower, then Riding mower. */
const byFirstLetters: OptionsFilter<MachineKind> = ({ options, search }) => {
  const wanted = fold(search);
  const items = options.filter(isItem);
  const begins = items.filter(({ label }) => fold(label).startsWith(wanted));
  const within = items.filter(
    (item) => !begins.includes(item) && fold(item.label).includes(` ${wanted}`),
  );
  return [...begins, ...within];
};

interface KindFieldProps {
  value: MachineKind | null;
  onChange: (kind: MachineKind | null) => void;
  error?: string;
  onEnter: (event: KeyboardEvent<HTMLInputElement>) => void;
}

/** The kind by its first letters; leaving the field takes what is highlighted. */
export function KindField({ value, onChange, error, onEnter }: KindFieldProps) {
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
      onKeyDownCapture={(event) => {
        if (event.key === 'Enter') onEnter(event);
      }}
    />
  );
}
