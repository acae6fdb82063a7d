import type { z } from 'zod';
import type { TakeIn } from '../../../shared/contract/counter/index.ts';
import type { StaffId } from '../../../shared/contract/ids.ts';
import { decimal } from '../../common/measure/decimal.ts';
import { signatureInput } from '../../common/signature-field.tsx';
import { readContact } from './contact.ts';
import type { Faults, TakeInDraft, TakeInField } from './draft.ts';
import { splitMakeAndModel } from './make-and-model.ts';
import { pieces, readSymptoms } from './symptom-words.ts';

type TakeInInput = z.input<typeof TakeIn>;

/** Makes that the shop has met, by which a plate is split into make and model. */
interface KnownMakes {
  machine: readonly string[];
  engine: readonly string[];
}

/** What has to be there before the desk is asked at all. */
export function stillWanted(draft: TakeInDraft): Faults {
  const faults: Faults = {};
  if (draft.knownCustomer === null && draft.name.trim() === '')
    faults.name = 'Type the customer’s name.';
  if (draft.knownMachine === null && draft.kind === null)
    faults.kind = 'Type what kind of machine it is; the first letters do.';
  if (draft.knownMachine?.openJob && !draft.takeInAgain)
    faults.serial = 'Go on with the open job, or say that the machine is taken in again.';
  if (draft.complaint.trim() === '')
    faults.complaint = 'Write down the complaint in the customer’s words.';
  if (draft.signature === null)
    faults.signature = 'Let the customer sign, or record a typed signature.';
  if (draft.engineHours.trim() !== '' && decimal(draft.engineHours) === null)
    faults.engineHours = 'Give the running hours as a number, or leave them empty.';
  return faults;
}

/** The draft as the one call that takes it in. */
export function takeInCall(
  draft: TakeInDraft & { signature: NonNullable<TakeInDraft['signature']> },
  by: StaffId,
  knownMakes: KnownMakes,
): TakeInInput {
  const { symptoms, otherWords } = readSymptoms(draft.symptoms);
  return {
    by,
    customer: customerOf(draft),
    machine: machineOf(draft, knownMakes),
    complaint: draft.complaint,
    symptoms,
    condition: withOtherWords(draft.condition, otherWords),
    leftWith: pieces(draft.leftWith),
    fuel: draft.fuel,
    lastService: draft.lastService,
    engineHours: draft.engineHours.trim() === '' ? null : decimal(draft.engineHours),
    reachBy: draft.reachBy,
    diagnosisFee: draft.diagnosisFee,
    spendingLimit: draft.spendingLimit,
    deposit: draft.deposit,
    promisedFor: draft.promisedFor,
    signature: signatureInput(draft.signature),
  };
}

const customerOf = (draft: TakeInDraft): TakeInInput['customer'] =>
  draft.knownCustomer !== null
    ? { which: 'known', id: draft.knownCustomer.id }
    : {
        which: 'new',
        name: draft.name,
        ...readContact(draft.contact),
        address: draft.address,
        reachBy: draft.reachBy,
        note: draft.note,
      };

function machineOf(draft: TakeInDraft, knownMakes: KnownMakes): TakeInInput['machine'] {
  if (draft.knownMachine !== null)
    return {
      which: 'known',
      id: draft.knownMachine.id,
      changedHands: draft.changedHands,
      takeInAgain: draft.takeInAgain,
    };
  const engine = draft.engineModel ?? splitMakeAndModel(draft.engine, knownMakes.engine);
  return {
    which: 'new',
    kind: draft.kind ?? 'other',
    ...splitMakeAndModel(draft.machine, knownMakes.machine),
    serial: draft.serial,
    engine: {
      make: engine.make,
      model: engine.model,
      typeCode: draft.typeCode,
      serial: draft.engineSerial,
      dateCode: draft.dateCode,
      engineModelId: draft.engineModel?.id ?? null,
    },
  };
}

/** Words typed among the symptoms that are none of the list are kept where the counter's own eye speaks. */
export const withOtherWords = (condition: string, words: readonly string[]): string =>
  [condition.trim(), words.length === 0 ? '' : `Also seen: ${words.join(', ')}.`]
    .filter(Boolean)
    .join('\n');

const FIELD_OF_PATH: Record<string, TakeInField> = {
  'customer.id': 'name',
  'customer.name': 'name',
  'customer.phone': 'contact',
  'customer.email': 'contact',
  'customer.address': 'address',
  'customer.note': 'note',
  'machine.id': 'serial',
  'machine.serial': 'serial',
  'machine.kind': 'kind',
  'machine.make': 'machine',
  'machine.model': 'machine',
  'machine.engine.make': 'engine',
  'machine.engine.model': 'engine',
  'machine.engine.engineModelId': 'engine',
  'machine.engine.typeCode': 'typeCode',
  'machine.engine.serial': 'engineSerial',
  'machine.engine.dateCode': 'dateCode',
  complaint: 'complaint',
  symptoms: 'symptoms',
  condition: 'condition',
  leftWith: 'leftWith',
  fuel: 'fuel',
  lastService: 'lastService',
  engineHours: 'engineHours',
  diagnosisFee: 'diagnosisFee',
  spendingLimit: 'spendingLimit',
  deposit: 'deposit',
  promisedFor: 'promisedFor',
  reachBy: 'reachBy',
  signature: 'signature',
};

/** Where on the page a refused path is shown: the path itself, or the nearest part above it. */
function fieldOfPath(path: string): TakeInField | undefined {
  for (let parts = path.split('.'); parts.length > 0; parts = parts.slice(0, -1)) {
    const field = FIELD_OF_PATH[parts.join('.')];
    if (field !== undefined) return field;
  }
  return undefined;
}

/** Whether a refused path is shown at a field of the page. */
export const hasField = (path: string): boolean => fieldOfPath(path) !== undefined;

/** Refused paths, sorted to the fields of the page; what has no field stays in the notice above. */
export function faultsOf(issues: readonly { path: string; message: string }[]): Faults {
  const faults: Faults = {};
  for (const { path, message } of issues) {
    const field = fieldOfPath(path);
    if (field !== undefined) faults[field] ??= message;
  }
  return faults;
}
