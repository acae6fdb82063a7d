import { minorToDecimal } from '../../shared/money/format.ts';
import { DEMO_PARTS, type SupplierName } from './parts.ts';

/** The price files of one supplier of the invented shop: one that was applied, and one to look at. */

export const PRICE_FILE_SUPPLIER: SupplierName = 'Prairie Line Engine Supply';

const HEADING = 'Part no,Description,Your price,List price,Pack of,Replaced by';

/** What they sell beside what is on the shelf: number, description, cost and list price in minor units. */
const BESIDE: readonly [number: string, description: string, cost: number, list: number][] = [
  ['OS-172-012', 'Piston, 0.50 oversize, OH-172', 2520, 4190],
  ['OS-172-021', 'Ring set, 0.25 oversize, OH-172', 1510, 2720],
  ['OS-172-022', 'Ring set, 0.50 oversize, OH-172', 1510, 2720],
  ['OS-172-055', 'Camshaft with gear, OH-172', 4380, 7150],
  ['OS-172-120', 'Governor arm with spring, OH-172', 690, 1390],
  ['BV-190-2011', 'Piston, 0.25 oversize, V-190', 2330, 3940],
  ['BV-190-2055', 'Camshaft, V-190', 3970, 6480],
  ['BV-190-2120', 'Flywheel, V-190', 5410, 8900],
];

/** They ask more for gaskets and a little less for filters in their second file. */
const dearer = (description: string, cost: number): number => {
  if (/gasket/i.test(description)) return Math.round(cost * 1.06);
  return /filter/i.test(description) ? Math.round(cost * 0.97) : cost;
};

function lines(second: boolean): string[] {
  const ours = DEMO_PARTS.filter(({ supplier }) => supplier === PRICE_FILE_SUPPLIER);
  const all = [
    ...ours.map(({ number, description, cost, price }) => ({
      number,
      description,
      cost,
      list: price,
    })),
    ...BESIDE.map(([number, description, cost, list]) => ({ number, description, cost, list })),
  ];
  return all.map(({ number, description, cost, list }) => {
    const now = second ? dearer(description, cost) : cost;
    const replaced = second && number === 'BV-190-2071' ? 'BV-190-2072' : '';
    return `${number},"${description}",${minorToDecimal(now, 2)},${minorToDecimal(list, 2)},1,${replaced}`;
  });
}

const NEW_IN_SECOND = [
  'BV-190-2072,"Carburettor kit, V-190, with needle",7.80,16.40,1,',
  'OS-172-032,"Head gasket, OH-172, steel",4.60,9.90,1,',
];

/** As such files come: a price that is asked for, a number left out, a quotation mark too few. */
const BROKEN_IN_SECOND = [
  'OS-172-130,"Crankshaft, OH-172",on request,189.00,1,',
  ',"Recoil spring, OH-172",3.10,6.90,1,',
  'BV-190-2130,"Muffler guard, V-190,4.20,8.90,1,',
];

const file = (all: readonly string[]): string => `${[HEADING, ...all].join('\r\n')}\r\n`;

export const DEMO_PRICE_FILES = {
  applied: { fileName: 'prairie-line-spring.csv', text: file(lines(false)) },
  toLookAt: {
    fileName: 'prairie-line-autumn.csv',
    text: file([...lines(true), ...NEW_IN_SECOND, ...BROKEN_IN_SECOND]),
  },
} as const;
