import type { Customer, Machine } from '../../../shared/contract/counter/index.ts';
import type { EngineModelId } from '../../../shared/contract/ids.ts';
import type { MachineKind, ReachBy } from '../../../shared/work/vocabulary.ts';
import type { SignatureValue } from '../../common/signature-field.tsx';

/** The intake as it stands on the page, before it is taken in; kept when the window is closed. */
export interface TakeInDraft {
  /** Somebody who is in the store already; the fields of a new customer are then left alone. */
  knownCustomer: Customer | null;
  name: string;
  /** Telephone and e-mail as they were told, in one line. */
  contact: string;
  address: string;
  note: string;

  knownMachine: Machine | null;
  /** The known machine was somebody else's and is now the customer's. */
  changedHands: boolean;
  /** The known machine is here on an open job, and is to have another all the same. */
  takeInAgain: boolean;
  serial: string;
  kind: MachineKind | null;
  /** Make and model as read off the plate, in one line. */
  machine: string;
  engine: string;
  /** The spec book's entry that was chosen or that the typed engine is the very name of. */
  engineModel: { id: EngineModelId; make: string; model: string } | null;
  typeCode: string;
  engineSerial: string;
  dateCode: string;

  complaint: string;
  /** As typed: words that the page reads as symptoms. */
  symptoms: string;
  condition: string;
  leftWith: string;
  fuel: string;
  lastService: string;
  /** Running hours as typed; read when it is sent. */
  engineHours: string;

  diagnosisFee: number | null;
  spendingLimit: number | null;
  deposit: number | null;
  promisedFor: string | null;
  reachBy: ReachBy;
  signature: SignatureValue | null;
}

export type TakeInField = keyof TakeInDraft;

export const emptyDraft: TakeInDraft = {
  knownCustomer: null,
  name: '',
  contact: '',
  address: '',
  note: '',
  knownMachine: null,
  changedHands: false,
  takeInAgain: false,
  serial: '',
  kind: null,
  machine: '',
  engine: '',
  engineModel: null,
  typeCode: '',
  engineSerial: '',
  dateCode: '',
  complaint: '',
  symptoms: '',
  condition: '',
  leftWith: '',
  fuel: '',
  lastService: '',
  engineHours: '',
  diagnosisFee: null,
  spendingLimit: null,
  deposit: null,
  promisedFor: null,
  reachBy: 'telephone',
  signature: null,
};

/** What every group of fields gets: the draft, a way to change it, and what is wrong with it. */
export interface DraftPart {
  draft: TakeInDraft;
  change: (part: Partial<TakeInDraft>) => void;
  faults: Faults;
}

export type Faults = Partial<Record<TakeInField, string>>;
