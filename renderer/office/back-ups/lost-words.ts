import type { FoundBackUp } from '../../../shared/contract/back-ups.ts';

/** So many numbers are named; of more, how many there are. */
const NAMED = 12;

function named(numbers: readonly string[], one: string, many: string): string[] {
  if (numbers.length === 0) return [];
  if (numbers.length === 1) return [`${one} ${numbers[0]}`];
  const rest = numbers.length - NAMED;
  const tail = rest > 0 ? ` and ${rest} more` : '';
  return [`${numbers.length} ${many}: ${numbers.slice(0, NAMED).join(', ')}${tail}`];
}

const counted = (count: number, one: string, many: string): string[] =>
  count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];

/** What the shop has that a back-up has not, a line each; none when it is only smaller things. */
export function lostWords(lost: FoundBackUp['lost']): string[] {
  return [
    ...named(lost.jobs, 'Job', 'jobs'),
    ...named(lost.invoices, 'Invoice', 'invoices'),
    ...counted(lost.payments, 'payment', 'payments'),
    ...counted(lost.readings, 'reading', 'readings'),
    ...counted(lost.customers, 'customer', 'customers'),
  ];
}
