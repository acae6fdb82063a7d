import type { MachineKind } from './vocabulary.ts';

/** The usual cautions of the trade, as they stand on screens and papers. */

const FUEL = 'Fuel is drained and filled outdoors, away from flame, with the engine cold.';
const CARBON_MONOXIDE =
  'Run the engine outdoors only: its exhaust holds carbon monoxide, which has no smell and kills.';
const LEAD = 'Take the plug lead off and earth it before anything is turned by hand.';
const BATTERY =
  'Battery: a spark or flame beside it sets off its gas; negative lead off first and on last.';
const HOT = 'The exhaust and the head stay hot for a long time.';

/** Local law comes before anything printed here. */
export const LOCAL_LAW =
  'Local law on estimates, storage, liens, tax and signatures comes before anything printed here.';

/** Of a machine that leaves the shop unsafe. */
export const NOT_TO_BE_RUN =
  'It is not safe to run as it stands. Do not start it, lend it or sell it as running before that is mended; keep the plug lead off.';

const OF_KIND: Partial<Record<MachineKind, string>> = {
  tiller: 'Keep hands and feet clear of the tines; stop the engine before clearing them.',
  mower: 'Keep hands and feet clear of the blade; stop the engine and take the lead off first.',
  'riding-mower': 'Keep hands and feet clear of the blades; do not mow across a steep bank.',
  generator:
    'Only a licensed electrician may connect a generator to the wiring of a house: back-feed kills.',
  pump: 'Never pump fuel or chemicals with a water pump.',
  'log-splitter': 'Keep hands off the ram and the wedge; one person works the lever and the log.',
  'snow-thrower': 'Never clear the chute by hand; stop the engine and use the stick.',
  'pressure-washer': 'The jet cuts skin: a wound by it needs a doctor at once.',
  chipper: 'Nothing but wood goes in; stop the engine before the hopper is opened.',
  chainsaw: 'Wear leg, eye and ear protection; check the chain brake before each use.',
};

/** Machines that usually have a battery. */
const BATTERIED: readonly MachineKind[] = ['riding-mower', 'generator'];

/** For the customer to take home with the machine. */
export const handoverCautions = (kind: MachineKind): string[] =>
  [
    OF_KIND[kind],
    CARBON_MONOXIDE,
    FUEL,
    LEAD,
    HOT,
    BATTERIED.includes(kind) ? BATTERY : undefined,
  ].filter((line) => line !== undefined);

/** For the counter, while the machine comes in. */
export const INTAKE_CAUTIONS = [
  FUEL,
  'Loose batteries and fuel cans stay outside the shop.',
  LOCAL_LAW,
];

/** On the tag, for whoever moves the machine. */
export const TAG_CAUTIONS = [
  'Plug lead off and earthed before it is turned.',
  'Fuel may be in the tank.',
];

/** On the bench, above everything that is measured and built. */
export const BENCH_CAUTIONS = [
  'Plug lead off and earthed before the engine is turned by hand.',
  'Eye protection: recoil, governor and valve springs fly.',
  'Old gaskets and brake bands may hold asbestos: keep them wet, don’t sand or blow.',
  'A leak-down test can turn the crankshaft: hands clear.',
  'Run engines only with the exhaust led outside (carbon monoxide).',
  'Batteries give off hydrogen: no spark, no flame; negative lead off first and on last; eyes covered.',
  'Welding, grinding and flames: never on a tank or beside fuel, the battery off first.',
  'Solvents and used oil: gloves and air, and away by local rule.',
  'Gas-fuelled engines, pressure vessels and house wiring: licensed people only.',
];

/** Where an engine is run for the first time after a rebuild. */
export const RUN_CAUTIONS = [
  'Exhaust led outside before it starts: carbon monoxide has no smell and kills.',
  'Know how to stop it before you start it: stop switch, and the fuel tap behind it.',
  'Hands, sleeves, hair and cords clear of rotating parts; blades, tines and belts off or out of gear.',
  'Muffler, head and oil are hot: let it cool before it is touched.',
  'A leak-down test can turn the crankshaft: hands and wrench clear.',
  'Gas-fuelled engines, pressure vessels and house wiring: licensed people only.',
];
