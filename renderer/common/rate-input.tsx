import { TextInput, type TextInputProps } from '@mantine/core';
import { useEffect, useRef } from 'react';
import { readRate, WHOLE, writeRate } from './rate-text.ts';
import { useTyped } from './use-typed.ts';

interface RateInputProps
  extends Omit<TextInputProps, 'value' | 'onChange' | 'defaultValue' | 'type'> {
  /** Millionths; null while nothing stands there. */
  value: number | null;
  onChange: (ppm: number | null) => void;
  /** Millionths. */
  most?: number;
}

/** A share in percent, typed as people write it and held as whole millionths. */
export function RateInput({
  value,
  onChange,
  most = WHOLE,
  onFocus,
  onBlur,
  ...input
}: RateInputProps) {
  const field = useRef<HTMLInputElement>(null);
  const asWritten = value === null ? '' : writeRate(value);
  const { typed, type, tidy } = useTyped(value, asWritten);
  const unreadable = readRate(typed, most) === null && typed.trim() !== '';
  const hint = `Type a rate from 0 to ${writeRate(most)}.`;
  useEffect(() => {
    field.current?.setCustomValidity(unreadable ? hint : '');
  }, [unreadable, hint]);
  return (
    <TextInput
      {...input}
      ref={field}
      inputMode="decimal"
      autoComplete="off"
      value={typed}
      error={unreadable ? hint : input.error}
      rightSection={<span aria-hidden>%</span>}
      rightSectionPointerEvents="none"
      onChange={(event) => {
        const next = event.currentTarget.value;
        type(next);
        const ppm = readRate(next, most);
        if (ppm !== null || next.trim() === '') onChange(ppm);
      }}
      onFocus={(event) => {
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
