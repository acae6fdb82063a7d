import type { JobHead, MachineHead, Party } from '../content.ts';
import { STYLE } from './ink.ts';
import type { Block, Sheet } from './sheet.ts';
import { table } from './table.ts';
import type { Cell } from './table-rows.ts';

/** Who and what the paper is about, as far as it is: customer, machine and engine, job; one column each. */
export function parties(sheet: Sheet): Block {
  const { customer, machine, job } = sheet.head;
  const told = [
    ...(customer === undefined ? [] : [{ heading: 'Customer', width: 1.15, cell: who(customer) }]),
    ...(machine === undefined
      ? []
      : [
          { heading: 'Machine', width: 1, cell: what(machine) },
          { heading: 'Engine', width: 1, cell: engine(machine) },
        ]),
    ...(job === undefined ? [] : [{ heading: 'Job', width: 1, cell: when(sheet, job) }]),
  ];
  return table(sheet, { columns: told, rows: [{ cells: told.map(({ cell }) => cell) }] });
}

const who = ({ name, addressLines, phone, email }: Party): Cell =>
  column(name, [...addressLines, phone, email]);

const what = ({ make, model, kind, serial }: MachineHead): Cell =>
  column(named([make, model]) || kind, [kind, labelled('Serial', serial)]);

const engine = (machine: MachineHead): Cell =>
  column(named([machine.engineMake, machine.engineModel]) || 'Not recorded', [
    labelled('Type code', machine.engineTypeCode),
    labelled('Serial', machine.engineSerial),
    labelled('Date code', machine.engineDateCode),
  ]);

const when = ({ writing }: Sheet, job: JobHead): Cell =>
  column(job.code, [
    `Taken in ${writing.date(job.takenInOn)}`,
    job.promisedFor === null ? 'No date promised' : `Promised for ${writing.date(job.promisedFor)}`,
  ]);

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
