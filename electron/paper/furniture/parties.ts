import { STYLE } from './ink.ts';
import type { Block, Sheet } from './sheet.ts';
import { table } from './table.ts';
import type { Cell } from './table-rows.ts';

/** Who and what the paper is about: customer, machine and engine, job; one column each. */
export function parties(sheet: Sheet): Block {
  const { customer, machine, job } = sheet.head;
  const who = column(customer.name, [...customer.addressLines, customer.phone, customer.email]);
  const what = column(named([machine.make, machine.model]) || machine.kind, [
    machine.kind,
    labelled('Serial', machine.serial),
  ]);
  const engine = column(named([machine.engineMake, machine.engineModel]) || 'Not recorded', [
    labelled('Type code', machine.engineTypeCode),
    labelled('Serial', machine.engineSerial),
    labelled('Date code', machine.engineDateCode),
  ]);
  const when = column(job.code, [
    `Taken in ${sheet.writing.date(job.takenInOn)}`,
    job.promisedFor === null
      ? 'No date promised'
      : `Promised for ${sheet.writing.date(job.promisedFor)}`,
  ]);
  return table(sheet, {
    columns: [
      { heading: 'Customer', width: 1.15 },
      { heading: 'Machine', width: 1 },
      { heading: 'Engine', width: 1 },
      { heading: 'Job', width: 1 },
    ],
    rows: [{ cells: [who, what, engine, when] }],
  });
}

function column(first: string, rest: string[]): Cell {
  return {
    paragraphs: [
      { text: first, style: STYLE.strong },
      ...rest.filter((text) => text.trim() !== '').map((text) => ({ text, style: STYLE.soft })),
    ],
  };
}

function named(parts: string[]): string {
  return parts.filter((part) => part.trim() !== '').join(' ');
}

function labelled(label: string, value: string): string {
  return value.trim() === '' ? '' : `${label} ${value}`;
}
