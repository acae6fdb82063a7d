import { TextInput, type TextInputProps } from '@mantine/core';
import { useEffect, useRef } from 'react';
import type { Discount } from '../../../shared/contract/till/index.ts';
import { useShop } from '../../common/shop.tsx';
import { useTyped } from '../../common/use-typed.ts';
import { readDiscount, writeDiscount } from './discount-text.ts';

interface DiscountInputProps
  extends Omit<TextInputProps, 'value' | 'onChange' | 'defaultValue' | 'type'> {
  value: Discount | null;
  onChange: (discount: Discount | null) => void;
}

/** A discount, typed as a share or as an amount. */
export function DiscountInput({ value, onChange, onBlur, ...input }: DiscountInputProps) {
  const shop = useShop();
  const field = useRef<HTMLInputElement>(null);
  const asWritten = writeDiscount(value, shop);
  const { typed, type, tidy } = useTyped(asWritten, asWritten);
  const read = (text: string): { discount: Discount | null; problem: string } => {
    try {
      return { discount: readDiscount(text, shop), problem: '' };
    } catch (error) {
      return { discount: null, problem: error instanceof RangeError ? error.message : '' };
    }
  };
  const { problem } = read(typed);
  useEffect(() => {
    field.current?.setCustomValidity(problem);
  }, [problem]);
  return (
    <TextInput
      {...input}
      ref={field}
      autoComplete="off"
      placeholder="10 % or an amount"
      value={typed}
      error={problem === '' ? undefined : problem}
      onChange={(event) => {
        const next = event.currentTarget.value;
        type(next);
        onChange(read(next).discount);
      }}
      onBlur={(event) => {
        if (problem === '') tidy();
        onBlur?.(event);
      }}
    />
  );
}
