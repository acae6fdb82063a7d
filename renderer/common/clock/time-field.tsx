import { TextInput, type TextInputProps } from '@mantine/core';
import { useState } from 'react';
import { useFormat } from '../format.ts';
import { readEnd, readTime } from './time-text.ts';

interface TimeFieldProps extends Omit<TextInputProps, 'value' | 'onChange' | 'type' | 'error'> {
  label: string;
  /** `13:05`; null while nothing that can be read stands there. */
  value: string | null;
  onChange: (time: string | null) => void;
  /** For an end: when it began, so that 5 after one o’clock is in the afternoon. */
  after?: string | null;
  error?: string | undefined;
}

const HINT = 'Type a time: 9, 930, 2:15 pm.';

/** A time of the day that is quick to type; what was understood stands below the field. */
export function TimeField({ value, onChange, after, error, onBlur, ...input }: TimeFieldProps) {
  const format = useFormat();
  const [typed, setTyped] = useState(value ?? '');
  const understand = (text: string) =>
    after === undefined ? readTime(text) : readEnd(text, after);
  const unreadable = typed.trim() !== '' && value === null;

  return (
    <TextInput
      {...input}
      autoComplete="off"
      inputMode="text"
      value={typed}
      error={unreadable ? HINT : error}
      description={value === null ? '9, 930, 2:15 pm' : format.wallTime(value)}
      inputWrapperOrder={['label', 'input', 'description', 'error']}
      onChange={(event) => {
        const text = event.currentTarget.value;
        setTyped(text);
        onChange(text.trim() === '' ? null : understand(text));
      }}
      onBlur={(event) => {
        if (value !== null) setTyped(value);
        onBlur?.(event);
      }}
    />
  );
}
