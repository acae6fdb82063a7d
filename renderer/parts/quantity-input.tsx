import { TextInput, type TextInputProps } from '@mantine/core';
import type { ReactNode } from 'react';
import { editableQuantity, parseQuantity } from '../../shared/money/index.ts';
import { useShop } from '../common/shop.tsx';
import { useTyped } from '../common/use-typed.ts';

interface QuantityInputProps
  extends Omit<TextInputProps, 'value' | 'onChange' | 'defaultValue' | 'type'> {
  label: ReactNode;
  /** Whole thousandths; null while nothing that can be read stands there. */
  value: number | null;
  onChange: (thousandths: number | null) => void;
  /** What is counted: pc, m, L. */
  unit: string;
}

function read(typed: string, locale: string): { quantity: number | null; error: string } {
  if (typed.trim() === '') return { quantity: null, error: '' };
  try {
    return { quantity: parseQuantity(typed, locale), error: '' };
  } catch (error) {
    return { quantity: null, error: error instanceof RangeError ? error.message : String(error) };
  }
}

/** A quantity, typed as people write it and held as whole thousandths. */
export function QuantityInput({
  value,
  onChange,
  unit,
  error,
  onBlur,
  ...input
}: QuantityInputProps) {
  const { locale } = useShop();
  const written = value === null ? '' : editableQuantity(value, locale);
  const { typed, type, tidy } = useTyped(value, written);
  const problem = read(typed, locale).error;

  return (
    <TextInput
      {...input}
      inputMode="decimal"
      autoComplete="off"
      value={typed}
      error={problem === '' ? error : problem}
      rightSection={<span aria-hidden>{unit}</span>}
      rightSectionWidth={52}
      rightSectionPointerEvents="none"
      onChange={(event) => {
        type(event.currentTarget.value);
        onChange(read(event.currentTarget.value, locale).quantity);
      }}
      onBlur={(event) => {
        if (problem === '') tidy();
        onBlur?.(event);
      }}
    />
  );
}
