import { TextInput, type TextInputProps } from '@mantine/core';
import { type ReactNode, useEffect, useRef } from 'react';
import { editableMoney, parseMoney } from '../../shared/money/index.ts';
import { useShop } from './shop.tsx';
import { useTyped } from './use-typed.ts';

interface MoneyInputProps
  extends Omit<TextInputProps, 'value' | 'onChange' | 'defaultValue' | 'type'> {
  label: ReactNode;
  /** Whole minor units; null while nothing that can be read stands there. */
  value: number | null;
  onChange: (minor: number | null) => void;
}

type Read = { minor: number | null; error: string };

function read(typed: string, currency: string, locale: string): Read {
  if (typed.trim() === '') return { minor: null, error: '' };
  try {
    return { minor: parseMoney(typed, currency, locale), error: '' };
  } catch (error) {
    return { minor: null, error: error instanceof RangeError ? error.message : String(error) };
  }
}

/** An amount of the shop's currency, typed as people write it and held as whole minor units. */
export function MoneyInput({ value, onChange, error, onFocus, onBlur, ...input }: MoneyInputProps) {
  const { currency, locale } = useShop();
  const field = useRef<HTMLInputElement>(null);
  const asWritten = value === null ? '' : editableMoney(value, currency, locale);
  const { typed, type, tidy } = useTyped(value, asWritten);
  const understood = read(typed, currency, locale);
  const unreadable = understood.error !== '';

  // A form must not be sent as if the field were empty when it holds something unreadable.
  useEffect(() => {
    field.current?.setCustomValidity(understood.error);
  }, [understood.error]);

  return (
    <TextInput
      {...input}
      ref={field}
      inputMode="decimal"
      autoComplete="off"
      value={typed}
      error={unreadable ? understood.error : error}
      rightSection={<span aria-hidden>{currency}</span>}
      rightSectionWidth={52}
      rightSectionPointerEvents="none"
      onChange={(event) => {
        const next = event.currentTarget.value;
        type(next);
        onChange(read(next, currency, locale).minor);
      }}
      onFocus={(event) => {
        // The next figure takes the place of this one, also after a click: 85 typed into 0.00.
        event.currentTarget.select();
        onFocus?.(event);
      }}
      onBlur={(event) => {
        if (!unreadable) tidy();
        onBlur?.(event);
      }}
    />
  );
}
