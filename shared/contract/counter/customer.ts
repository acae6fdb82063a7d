import { z } from 'zod';
import { REACH_BY } from '../../work/vocabulary.ts';
import { Instant, maybeText, text } from '../fields.ts';
import { CustomerId } from '../ids.ts';

/** A customer as the counter keeps them. */

/** E-mail may be left empty; what is there must be an address. */
const MaybeEmail = maybeText(200).pipe(
  z.union([z.literal(''), z.email('That is not an e-mail address; leave it empty or mend it.')]),
);

export const customerFields = {
  name: text(120),
  /** As the customer says it; kept as typed. */
  phone: maybeText(40),
  email: MaybeEmail,
  address: maybeText(400),
  reachBy: z.enum(REACH_BY).default('telephone'),
  note: maybeText(2000),
};

export const Customer = z.object({
  id: CustomerId,
  number: z.int(),
  name: z.string(),
  phone: z.string(),
  /** The telephone number in international form, when it could be read as one; else empty. */
  phoneInternational: z.string(),
  email: z.string(),
  address: z.string(),
  reachBy: z.enum(REACH_BY),
  note: z.string(),
  since: Instant,
});
export type Customer = z.infer<typeof Customer>;
