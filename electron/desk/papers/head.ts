import type { Customer, JobDossier } from '../../../shared/contract/counter/index.ts';
import type { Signature as KeptSignature } from '../../../shared/contract/fields.ts';
import { isTypedName } from '../../../shared/work/typed-name.ts';
import { MACHINE_KIND_LABELS } from '../../../shared/work/vocabulary.ts';
import type { JobPaper, PaperHead, Party, Signature } from '../../paper/content.ts';
import type { Writing } from '../writing.ts';

/** Lines of an address as people type them into one field. */
const lines = (address: string): string[] =>
  address
    .split(/\n|;/)
    .map((line) => line.trim())
    .filter(Boolean);

/** What every paper carries, whatever it is about. */
export const shopHead = (
  { shop, staff, at }: Pick<Writing, 'shop' | 'at'> & { staff: { name: string } },
  number: string,
): PaperHead => ({
  number,
  issuedAt: at,
  issuedBy: staff.name,
  shop: {
    name: shop.name,
    addressLines: lines(shop.address),
    phone: shop.phone,
    email: shop.email,
    taxNumber: shop.taxNumber,
    paperSize: shop.paperSize,
    locale: shop.locale,
    timeZone: shop.timeZone,
    currency: shop.currency,
  },
});

export const partyOf = ({
  name,
  phone,
  email,
  address,
}: Pick<Customer, 'name' | 'phone' | 'email' | 'address'>): Party => ({
  name,
  phone,
  email,
  addressLines: lines(address),
});

/** What every paper of a job carries. */
export function paperHead(writing: Writing, job: JobDossier, number: string): JobPaper {
  const { customer, machineDetails } = job;
  const { engine } = machineDetails;
  return {
    ...shopHead(writing, number),
    job: {
      number: job.number,
      code: job.code,
      takenInOn: job.takenInOn,
      promisedFor: job.promisedFor,
    },
    customer: partyOf(customer),
    machine: {
      kind: MACHINE_KIND_LABELS[machineDetails.kind],
      make: machineDetails.make,
      model: machineDetails.model,
      serial: machineDetails.serial,
      engineMake: engine.make,
      engineModel: engine.model,
      engineTypeCode: engine.typeCode,
      engineSerial: engine.serial,
      engineDateCode: engine.dateCode,
    },
  };
}

/** A signature as it is kept: what was drawn or typed, and when. */
export const signed = (input: Omit<KeptSignature, 'signedAt'>, at: string): KeptSignature => ({
  ...input,
  signedAt: at,
});

/** A signature as it goes on a paper, which says of a typed name who entered it. */
export const onPaper = (
  signature: KeptSignature,
  { staff }: { staff: { name: string } },
): Signature => ({ ...signature, typedBy: isTypedName(signature) ? staff.name : null });

/** `W-000042`. */
export const paperNumber = (letter: string, number: number): string =>
  `${letter}-${String(number).padStart(6, '0')}`;

/** Terms as people type them into one field: a line each. */
export const termLines = (terms: string): string[] =>
  terms
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);
