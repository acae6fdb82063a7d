import { isPropertyClass, type PropertyClass } from './property-class.ts';

/**
 * Proof loads, N, as ISO 898-1:2013 prints them (tables for coarse and fine pitch). They are kept
 * because the standard rounds unevenly: stress area × proof stress misses them by up to 0.6 %.
 *
 * The coarse threads were read in a distributor's copy of the table, which proves what that copy prints;
 * M8×1 is from memory. Check both against the standard before they are quoted.
 */
const CLASSES = '4.6 4.8 5.6 5.8 6.8 8.8 9.8 10.9 12.9';
const THREADS: Readonly<Record<string, string>> = {
  '3×0.5': '1130 1560 1410 1910 2210 2920 3270 4180 4880',
  '3.5×0.6': '1530 2100 1900 2580 2980 3940 4410 5630 6580',
  '4×0.7': '1980 2720 2460 3340 3860 5100 5710 7290 8520',
  '5×0.8': '3200 4400 3980 5400 6250 8230 9230 11800 13800',
  '6×1': '4520 6230 5630 7640 8840 11600 13100 16700 19500',
  '7×1': '6500 8960 8090 11000 12700 16800 18800 24000 28000',
  '8×1.25': '8240 11400 10200 13900 16100 21200 23800 30400 35500',
  '10×1.5': '13000 18000 16200 22000 25500 33700 37700 48100 56300',
  '12×1.75': '19000 26100 23600 32000 37100 48900 54800 70000 81800',
  '14×2': '25900 35600 32200 43700 50600 66700 74800 95500 112000',
  '16×2': '35300 48700 44000 59700 69100 91000 102000 130000 152000',
  '18×2.5': '43200 59500 53800 73000 84500 115000 - 159000 186000',
  '20×2.5': '55100 76000 68600 93100 108000 147000 - 203000 238000',
  '22×2.5': '68200 93900 84800 115000 133000 182000 - 252000 294000',
  '24×3': '79400 109000 98800 134000 155000 212000 - 293000 342000',
  '8×1': '- - - - - 22700 - 32500 -',
};

const PROOF_LOADS = proofLoads();

/** The printed proof load, N, of a thread in mm, or `undefined` where none is kept. */
export function printedProofLoad(
  diameter: number,
  pitch: number,
  propertyClass: PropertyClass,
): number | undefined {
  return PROOF_LOADS.get(`${diameter}×${pitch}`)?.get(propertyClass);
}

/** Every thread, class and load that is kept. */
export function printedProofLoads(): readonly {
  diameter: number;
  pitch: number;
  propertyClass: PropertyClass;
  load: number;
}[] {
  return [...PROOF_LOADS].flatMap(([thread, loads]) => {
    const [diameter, pitch] = thread.split('×').map(Number);
    return [...loads].map(([propertyClass, load]) => ({
      diameter: Number(diameter),
      pitch: Number(pitch),
      propertyClass,
      load,
    }));
  });
}

function proofLoads(): ReadonlyMap<string, ReadonlyMap<PropertyClass, number>> {
  const threads = new Map<string, Map<PropertyClass, number>>();
  for (const [thread, line] of Object.entries(THREADS)) {
    const columns = line.split(' ');
    const loads = new Map<PropertyClass, number>();
    for (const [index, name] of CLASSES.split(' ').entries()) {
      const load = Number(columns[index]);
      if (isPropertyClass(name) && Number.isFinite(load)) {
        loads.set(name, load);
      }
    }
    threads.set(thread, loads);
  }
  return threads;
}
