import type { ReactNode } from 'react';
import type { TakeInField } from './draft.ts';
import { SuggestingInput, type Suggestion } from './suggesting-input.tsx';

interface TokenFieldProps {
  label: string;
  field: TakeInField;
  value: string;
  onChange: (text: string) => void;
  /** What the piece being typed could become. */
  suggest: (piece: string) => Suggestion[];
  /** What was understood, below the field. */
  understood: ReactNode;
  placeholder: string;
  error?: string;
}

const lastComma = (text: string): number => Math.max(text.lastIndexOf(','), text.lastIndexOf(';'));

/** Several short things in one line, parted by commas. */
export function TokenField({ field, suggest, understood, ...input }: TokenFieldProps) {
  const { value, onChange } = input;
  const before = value.slice(0, lastComma(value) + 1);
  const piece = value.slice(lastComma(value) + 1).trim();
  return (
    <SuggestingInput
      {...input}
      data-field={field}
      inputWrapperOrder={['label', 'input', 'description', 'error']}
      description={understood}
      descriptionProps={{ component: 'div' }}
      suggestions={suggest(piece)}
      onPick={(picked) => onChange(`${before}${before === '' ? '' : ' '}${picked}, `)}
    />
  );
}
