import type { Shop } from '../../../shared/contract/office.ts';
import { isSample } from '../../../shared/work/office/sample-texts.ts';

export interface Matter {
  says: string;
  settled: boolean;
  /** No shop does without it: some charge no tax, some are one person. */
  wanted: boolean;
  /** Where it is written down, and the words for going there. */
  to: string;
  label: string;
}

type Known = Pick<Shop, 'address' | 'phone' | 'labourRate' | 'taxes' | 'claimTerms'>;

/**
 * What papers and bills go by and a new shop has not written down.
 * @param staff how many are on the staff list
 */
export function beforeFirst(shop: Known, staff: number): Matter[] {
  const reachable = shop.address !== '' && shop.phone !== '';
  const { length: taxes } = shop.taxes;
  return [
    {
      settled: reachable,
      wanted: true,
      says: reachable
        ? 'Address and telephone stand on every paper.'
        : 'Address or telephone of the shop are missing on every paper.',
      to: shop.address === '' ? '/office#address' : '/office#phone',
      label: 'Address and telephone',
    },
    {
      settled: shop.labourRate > 0,
      wanted: true,
      says:
        shop.labourRate > 0
          ? 'An hour of labour has its price.'
          : 'An hour of labour has no price yet.',
      to: '/office#labourRate',
      label: 'Labour, an hour',
    },
    {
      settled: taxes > 0,
      wanted: false,
      says: taxes > 0 ? 'Taxes are set.' : 'No tax is charged on anything.',
      to: '/office#taxes',
      label: 'Taxes',
    },
    {
      settled: shop.claimTerms !== '' && !isSample(shop.claimTerms),
      wanted: true,
      says:
        shop.claimTerms === ''
          ? 'The claim ticket, which the customer signs, has no terms.'
          : isSample(shop.claimTerms)
            ? 'The terms on the claim ticket are still the sample.'
            : 'The claim ticket has terms.',
      to: '/office/paper-texts#claimTerms',
      label: 'Words on papers',
    },
    {
      settled: staff > 1,
      wanted: false,
      says:
        staff > 1
          ? `${staff} people are on the staff list.`
          : 'You are alone on the staff list: readings and promises name who made them.',
      to: '/office/staff',
      label: 'Staff',
    },
  ];
}
