import { DatePicker } from '@mantine/dates';
import { type KeyboardEvent, useLayoutEffect, useRef, useState } from 'react';
import { addDays } from '../../shared/work/calendar.ts';
import { useShop, useToday } from './shop.tsx';
import { weekStart } from './week-start.ts';

interface CalendarProps {
  /** ISO calendar date; null while none is chosen. */
  value: string | null;
  onChoose: (isoDate: string | null) => void;
}

const WORDS = {
  previousMonth: 'Month before',
  nextMonth: 'Month after',
  monthLevelControl: 'Choose the month',
  previousYear: 'Year before',
  nextYear: 'Year after',
  yearLevelControl: 'Choose the year',
  previousDecade: 'Ten years before',
  nextDecade: 'Ten years after',
};

const DAYS: Record<string, number> = {
  ArrowLeft: -1,
  ArrowRight: 1,
  ArrowUp: -7,
  ArrowDown: 7,
};

const monthOf = (isoDate: string): string => isoDate.slice(0, 7);

/** A month of days. The arrows go on into the month before or after, which the library's own do not. */
export function Calendar({ value, onChoose }: CalendarProps) {
  const { locale } = useShop();
  const today = useToday();
  const [shown, setShown] = useState(value ?? today);
  const days = useRef<HTMLDivElement>(null);
  const wanted = useRef<string | null>(null);

  useLayoutEffect(() => {
    if (wanted.current !== shown) return;
    wanted.current = null;
    days.current?.querySelector<HTMLElement>(`[data-day="${shown}"]`)?.focus();
  }, [shown]);

  const leaveMonth = (event: KeyboardEvent, from: string) => {
    const step = DAYS[event.key];
    if (step === undefined) return;
    const to = addDays(from, step);
    if (monthOf(to) === monthOf(from)) return;
    event.preventDefault();
    wanted.current = to;
    setShown(to);
  };

  return (
    <div ref={days}>
      <DatePicker
        value={value}
        onChange={onChoose}
        date={shown}
        onDateChange={setShown}
        getDayProps={(date) => ({
          'data-day': date,
          onKeyDown: (event) => leaveMonth(event, date),
        })}
        hideOutsideDates
        weekendDays={[]}
        ariaLabels={WORDS}
        firstDayOfWeek={weekStart(locale)}
      />
    </div>
  );
}
