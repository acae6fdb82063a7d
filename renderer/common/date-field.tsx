import { ActionIcon, Popover, TextInput, type TextInputProps } from '@mantine/core';
import { IconCalendar } from '@tabler/icons-react';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { Calendar } from './calendar.tsx';
import { readDate } from './date-text.ts';
import { useFormat } from './format.ts';
import { useShop, useToday } from './shop.tsx';
import { useTyped } from './use-typed.ts';

interface DateFieldProps
  extends Omit<TextInputProps, 'value' | 'onChange' | 'defaultValue' | 'type'> {
  label: ReactNode;
  /** ISO calendar date; null while nothing that can be read stands there. */
  value: string | null;
  onChange: (isoDate: string | null) => void;
}

const HINT = 'Type a date: +3, fri, 12, or the date in full.';

/**
 * A date that is quick to type: `+3`, `fri`, `12`, `12/4`, ISO. What was understood stands below the
 * field in full. The calendar is for the mouse; Alt+Down opens it from the keyboard.
 */
export function DateField({ value, onChange, error, onBlur, onKeyDown, ...input }: DateFieldProps) {
  const { locale } = useShop();
  const today = useToday();
  const format = useFormat();
  const field = useRef<HTMLInputElement>(null);
  const { typed, type, tidy } = useTyped(value, value ?? '');
  const [open, setOpen] = useState(false);

  const understood = typed.trim() === '' ? null : readDate(typed, today, locale);
  const unreadable = typed.trim() !== '' && understood === null;

  useEffect(() => {
    field.current?.setCustomValidity(unreadable ? HINT : '');
  }, [unreadable]);

  const choose = (isoDate: string | null) => {
    type(isoDate ?? '');
    onChange(isoDate);
    setOpen(false);
    field.current?.focus();
  };

  return (
    <Popover
      opened={open}
      onChange={setOpen}
      trapFocus
      returnFocus
      position="bottom-start"
      withRoles={false}
    >
      <Popover.Target>
        <TextInput
          {...input}
          ref={field}
          autoComplete="off"
          value={typed}
          error={unreadable ? HINT : error}
          description={
            value === null
              ? '+3, fri, 12 or a date'
              : `${format.date(value)} (${format.fromToday(value)})`
          }
          inputWrapperOrder={['label', 'input', 'description', 'error']}
          rightSection={
            <ActionIcon
              variant="subtle"
              tabIndex={-1}
              aria-label="Open the calendar"
              onClick={() => setOpen(true)}
            >
              <IconCalendar size={18} aria-hidden />
            </ActionIcon>
          }
          onChange={(event) => {
            const next = event.currentTarget.value;
            type(next);
            onChange(next.trim() === '' ? null : readDate(next, today, locale));
          }}
          onBlur={(event) => {
            if (understood !== null) tidy();
            onBlur?.(event);
          }}
          onKeyDown={(event) => {
            if (event.altKey && event.key === 'ArrowDown') {
              event.preventDefault();
              setOpen(true);
            }
            onKeyDown?.(event);
          }}
        />
      </Popover.Target>
      <Popover.Dropdown role="dialog" aria-label="Calendar">
        <Calendar value={value} onChoose={choose} />
      </Popover.Dropdown>
    </Popover>
  );
}
