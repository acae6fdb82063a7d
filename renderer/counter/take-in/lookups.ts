import { useDebouncedValue } from '@mantine/hooks';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { Customer, Machine } from '../../../shared/contract/counter/index.ts';
import type { CustomerId } from '../../../shared/contract/ids.ts';
import type { EngineModel } from '../../../shared/contract/specbook.ts';
import { fold, foldNumber } from '../../../shared/work/fold.ts';
import { deskQuery } from '../../common/desk.ts';
import { readContact } from './contact.ts';
import type { TakeInDraft } from './draft.ts';

/** What the desk is asked while somebody types. All of it is help: the intake goes on without an answer. */

const TYPING_PAUSE = 120;

const NONE: never[] = [];

const digits = (text: string): string => text.replace(/\D/g, '');

/** A telephone number is looked for by its digits, however it is spaced; anything else as typed. */
const searchable = (text: string): string =>
  /^[\d\s()+\-./]{6,}$/.test(text.trim()) ? digits(text).slice(-7) : text.trim();

/** Customers whose name or telephone number is like what is typed, two letters at least. */
export function useCustomersLike(text: string): Customer[] {
  const [wanted] = useDebouncedValue(searchable(text), TYPING_PAUSE);
  const found = useQuery(
    deskQuery.counter.findCustomers.queryOptions({
      input: { text: wanted, limit: 8 },
      enabled: wanted.length >= 2,
      placeholderData: keepPreviousData,
    }),
  );
  return wanted.length >= 2 && text.trim() !== '' ? (found.data ?? NONE) : NONE;
}

/** Somebody with the very name, telephone number or address that is being entered as new. */
export function useLikelySame(draft: TakeInDraft): Customer | null {
  const byName = useCustomersLike(draft.knownCustomer === null ? draft.name : '');
  const told = readContact(draft.contact).phone;
  const phone = digits(told).length >= 6 ? told : '';
  const byPhone = useCustomersLike(draft.knownCustomer === null ? phone : '');
  const same =
    byName.find(({ name }) => fold(name) === fold(draft.name)) ??
    byPhone.find((customer) =>
      digits(customer.phoneInternational || customer.phone).endsWith(digits(phone).slice(-7)),
    );
  return same ?? null;
}

/** Machines by the beginning of a serial number; a known customer's own before anything is typed. */
export function useMachinesLike(serial: string, customerId: CustomerId | null): Machine[] {
  const [wanted] = useDebouncedValue(foldNumber(serial), TYPING_PAUSE);
  const asks = wanted.length >= 2 || customerId !== null;
  const found = useQuery(
    deskQuery.counter.findMachines.queryOptions({
      input: {
        text: wanted.length >= 2 ? wanted : '',
        customerId: wanted.length >= 2 ? null : customerId,
        limit: 8,
      },
      enabled: asks,
      placeholderData: keepPreviousData,
    }),
  );
  return asks ? (found.data ?? NONE) : NONE;
}

/** The machines that carry exactly this number, spaces and dashes apart. */
export const withSerial = (machines: readonly Machine[], serial: string): Machine[] =>
  machines.filter((machine) => foldNumber(machine.serial) === foldNumber(serial));

const firstWord = (text: string): string => text.trim().split(/[\s,]/)[0] ?? '';

/** Machines whose make begins like the plate that is being read. */
export function useMachinesOfMake(plate: string): Machine[] {
  const [wanted] = useDebouncedValue(firstWord(plate), TYPING_PAUSE);
  const found = useQuery(
    deskQuery.counter.findMachines.queryOptions({
      input: { text: wanted, limit: 100 },
      enabled: wanted.length >= 2,
      placeholderData: keepPreviousData,
    }),
  );
  return wanted.length >= 2 ? (found.data ?? NONE) : NONE;
}

/** The whole spec book's list of engines: short, and asked once. */
export function useEngineModels(): EngineModel[] {
  const found = useQuery(deskQuery.specbook.models.queryOptions({ input: {} }));
  return found.data ?? NONE;
}

const nameOf = ({ make, model }: { make: string; model: string }): string =>
  foldNumber(`${make} ${model}`);

/** The spec book's entry whose make and model are what is typed. */
export const engineModelNamed = (
  models: readonly EngineModel[],
  typed: string,
): EngineModel | undefined =>
  typed.trim() === ''
    ? undefined
    : models.find((model) => nameOf(model) === foldNumber(typed.replaceAll(',', ' ')));

/** Entries that have every typed word somewhere in make or model. */
export function engineModelsLike(models: readonly EngineModel[], typed: string): EngineModel[] {
  const words = fold(typed.replaceAll(',', ' ')).split(' ').filter(Boolean);
  return models
    .filter((model) => words.every((word) => fold(`${model.make} ${model.model}`).includes(word)))
    .slice(0, 8);
}
