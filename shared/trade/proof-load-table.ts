import { isPropertyClass, type PropertyClass } from './property-class.ts';

/**
 * Proof loads, N, as ISO 898-1:2013 prints them (tables for coarse and fine pitch). They are kept
 * because the standard rounds unevenly: stress area × proof stress misses them by up to 0.6 %.
 *
 * 8.8 and 10.9 of M5 to M12 coarse were read in a published copy of the tables; every other column,
 * and M8×1, is from memory and must be checked against the standard before it is quoted.
 */
const CLASSES = '4.6 4.8 5.6 5.8 6.8 8.8 9.8 10.9 12.9';
const THREADS: Readonly<Record<string, string>> = {
  '5×0.8': '3200 4400 3980 5400 6250 8230 9230 11800 13800',
  '6×1': '4520 6230 5630 7640 8840 11600 13100 16700 19500',
  '8×1.25': '8240 11400 10200 13900 16100 21200 23800 30400 35500',
  '10×1.5': '13000 18000 16200 22000 25500 33700 37700 48100 56300',
  '12×1.75': '19000 26100 23600 32000 37100 48900 54800 70000 81800',
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
