/** A part of the invented stock: number, description, bin, price, cost, opening stock, reorder point. */
type Row = readonly [
  number: string,
  description: string,
  bin: string,
  /** Minor units. */
  price: number,
  cost: number,
  /** Whole pieces. */
  stock: number,
  reorderAt: number,
];

const OSTREL = [
  ['OS-172-010', 'Piston, standard, OH-172', 'A1-01', 4150, 2490, 3, 1],
  ['OS-172-011', 'Piston, 0.25 oversize, OH-172', 'A1-02', 4150, 2490, 1, 1],
  ['OS-172-020', 'Ring set, standard, OH-172', 'A1-03', 2680, 1480, 5, 2],
  ['OS-172-030', 'Gasket set, complete, OH-172', 'A1-04', 2290, 1190, 7, 3],
  ['OS-172-031', 'Head gasket, OH-172', 'A1-05', 840, 380, 6, 4],
  ['OS-172-040', 'Intake valve, OH-172', 'A1-06', 1360, 720, 4, 2],
  ['OS-172-041', 'Exhaust valve, OH-172', 'A1-07', 1490, 790, 4, 2],
  ['OS-172-050', 'Connecting rod, OH-172', 'A1-08', 3940, 2310, 2, 1],
  ['OS-172-060', 'Ignition coil, OH-172', 'A1-09', 4420, 2620, 3, 1],
  ['OS-172-070', 'Carburettor, OH-172', 'A1-10', 5890, 3350, 2, 1],
  ['OS-172-071', 'Carburettor kit, OH-172', 'A1-11', 1780, 860, 6, 3],
  ['OS-172-080', 'Air filter, OH-172', 'A1-12', 1120, 540, 9, 4],
  ['OS-172-090', 'Oil seal, drive end, OH-172', 'A1-13', 760, 310, 5, 3],
  ['OS-172-091', 'Oil seal, flywheel end, OH-172', 'A1-14', 760, 310, 5, 3],
  ['OS-172-100', 'Recoil starter, OH-172', 'A1-15', 4690, 2740, 0, 1],
] as const satisfies readonly Row[];

const BROCKVANE = [
  ['BV-190-2010', 'Piston, standard, V-190', 'A2-01', 3880, 2290, 2, 1],
  ['BV-190-2020', 'Ring set, standard, V-190', 'A2-02', 2450, 1330, 4, 2],
  ['BV-190-2030', 'Gasket set, complete, V-190', 'A2-03', 1990, 1010, 6, 3],
  ['BV-190-2031', 'Head gasket, V-190', 'A2-04', 790, 350, 6, 4],
  ['BV-190-2040', 'Intake valve, V-190', 'A2-05', 1240, 640, 3, 2],
  ['BV-190-2041', 'Exhaust valve, V-190', 'A2-06', 1310, 690, 3, 2],
  ['BV-190-2050', 'Connecting rod, V-190', 'A2-07', 3620, 2090, 1, 1],
  ['BV-190-2060', 'Ignition coil, V-190', 'A2-08', 3980, 2280, 3, 1],
  ['BV-190-2070', 'Carburettor, V-190', 'A2-09', 5240, 2980, 2, 1],
  ['BV-190-2071', 'Carburettor kit, V-190', 'A2-10', 1590, 740, 7, 3],
  ['BV-190-2080', 'Air filter, V-190', 'A2-11', 940, 430, 12, 5],
  ['BV-190-2090', 'Oil seal, lower, V-190', 'A2-12', 820, 340, 4, 3],
  ['BV-190-2091', 'Oil seal, upper, V-190', 'A2-13', 690, 280, 4, 3],
  ['BV-190-2100', 'Recoil rope and handle, V-190', 'A2-14', 890, 390, 6, 3],
  ['BV-190-2110', 'Flywheel key, V-190', 'A2-15', 320, 110, 14, 6],
] as const satisfies readonly Row[];

const VARNOCK = [
  ['VK-680-1', 'Piston, standard, D-680', 'B1-01', 6740, 4110, 4, 2],
  ['VK-680-2', 'Ring set, standard, D-680', 'B1-02', 3980, 2330, 4, 2],
  ['VK-680-3', 'Gasket set, complete, D-680', 'B1-03', 5460, 3120, 3, 1],
  ['VK-680-4', 'Head gasket, D-680', 'B1-04', 1380, 690, 6, 4],
  ['VK-680-5', 'Intake valve, D-680', 'B1-05', 1890, 1020, 4, 2],
  ['VK-680-6', 'Exhaust valve, D-680', 'B1-06', 2080, 1140, 4, 2],
  ['VK-680-7', 'Connecting rod, D-680', 'B1-07', 6890, 4230, 2, 2],
  ['VK-680-8', 'Ignition coil, D-680', 'B1-08', 6120, 3690, 2, 2],
  ['VK-680-9', 'Carburettor, D-680', 'B1-09', 14_890, 9240, 1, 1],
  ['VK-680-10', 'Carburettor kit, D-680', 'B1-10', 2690, 1390, 3, 2],
  ['VK-680-11', 'Air filter, D-680', 'B1-11', 2140, 1130, 5, 3],
  ['VK-680-12', 'Oil filter, D-680', 'B1-12', 1280, 610, 8, 4],
  ['VK-680-13', 'Oil seal, drive end, D-680', 'B1-13', 1240, 560, 3, 2],
  ['VK-680-14', 'Starter motor, D-680', 'B1-14', 12_950, 8170, 1, 1],
  ['VK-680-15', 'Fuel pump, D-680', 'B1-15', 3890, 2160, 2, 1],
  ['VK-680-16', 'Piston, 0.25 oversize, D-680', 'B1-16', 6980, 4290, 2, 1],
  ['VK-680-17', 'Ring set, 0.25 oversize, D-680', 'B1-17', 4120, 2440, 2, 1],
] as const satisfies readonly Row[];

const KESTWICK = [
  ['KW416-101', 'Piston, standard, K-416', 'B2-01', 5680, 3420, 2, 1],
  ['KW416-102', 'Ring set, standard, K-416', 'B2-02', 3360, 1910, 3, 2],
  ['KW416-103', 'Gasket set, complete, K-416', 'B2-03', 3190, 1720, 5, 2],
  ['KW416-104', 'Head gasket, K-416', 'B2-04', 1090, 520, 6, 4],
  ['KW416-105', 'Intake valve, K-416', 'B2-05', 1720, 930, 3, 2],
  ['KW416-106', 'Exhaust valve, K-416', 'B2-06', 1880, 1010, 3, 2],
  ['KW416-107', 'Connecting rod, K-416', 'B2-07', 5190, 3080, 1, 1],
  ['KW416-108', 'Ignition coil, K-416', 'B2-08', 5340, 3110, 3, 1],
  ['KW416-109', 'Carburettor, K-416', 'B2-09', 8940, 5350, 2, 1],
  ['KW416-110', 'Carburettor kit, K-416', 'B2-10', 2180, 1080, 5, 3],
  ['KW416-111', 'Air filter, K-416', 'B2-11', 1640, 810, 8, 4],
  ['KW416-112', 'Oil seal, drive end, K-416', 'B2-12', 980, 430, 4, 3],
  ['KW416-113', 'Recoil starter, K-416', 'B2-13', 6290, 3740, 1, 1],
  ['KW416-114', 'Muffler, K-416', 'B2-14', 5580, 3290, 1, 1],
  ['KW416-115', 'Governor spring, K-416', 'B2-15', 540, 190, 6, 3],
] as const satisfies readonly Row[];

const PELLABY = [
  ['PB62-01', 'Piston with pin, P-62', 'C1-01', 4890, 2910, 2, 1],
  ['PB62-02', 'Ring set, P-62', 'C1-02', 1690, 880, 4, 2],
  ['PB62-03', 'Gasket set, P-62', 'C1-03', 1480, 720, 5, 2],
  ['PB62-04', 'Head gasket, P-62', 'C1-04', 520, 210, 6, 3],
  ['PB62-05', 'Connecting rod with bush, P-62', 'C1-05', 4480, 2650, 0, 1],
  ['PB62-06', 'Ignition coil, P-62', 'C1-06', 4650, 2760, 2, 1],
  ['PB62-07', 'Carburettor, P-62', 'C1-07', 6690, 3980, 1, 1],
  ['PB62-08', 'Diaphragm kit, P-62', 'C1-08', 1390, 620, 6, 3],
  ['PB62-09', 'Reed petals, P-62', 'C1-09', 1180, 540, 3, 2],
  ['PB62-10', 'Air filter, P-62', 'C1-10', 990, 440, 5, 3],
  ['PB62-11', 'Crankshaft seals, pair, P-62', 'C1-11', 1540, 710, 3, 2],
  ['PB62-12', 'Recoil spring, P-62', 'C1-12', 1260, 580, 2, 1],
  ['PB62-13', 'Clutch shoes, P-62', 'C1-13', 3390, 1930, 1, 1],
] as const satisfies readonly Row[];

const GENERAL = [
  ['GN-1001', 'Spark plug, 14 mm, long reach', 'D1-01', 690, 290, 24, 12],
  ['GN-1002', 'Spark plug, 14 mm, short reach', 'D1-02', 640, 260, 18, 12],
  ['GN-1003', 'Spark plug, 10 mm', 'D1-03', 780, 340, 8, 4],
  ['GN-1010', 'Engine oil SAE 30, quart', 'D1-04', 790, 390, 40, 12],
  ['GN-1011', 'Engine oil 5W-30, quart', 'D1-05', 890, 450, 22, 12],
  ['GN-1012', 'Two-stroke oil, 8 oz', 'D1-06', 690, 330, 14, 6],
  ['GN-1020', 'Fuel hose, 1/4 in, per foot', 'D2-01', 210, 80, 50, 20],
  ['GN-1021', 'Fuel filter, in line', 'D2-02', 480, 190, 20, 10],
  ['GN-1022', 'Fuel shut-off valve', 'D2-03', 890, 410, 6, 3],
  ['GN-1023', 'Hose clamp, 10 mm', 'D2-04', 90, 25, 80, 40],
  ['GN-1030', 'Starter rope, 5 mm, per foot', 'D2-05', 110, 40, 100, 40],
  ['GN-1031', 'Starter handle', 'D2-06', 420, 160, 8, 4],
  ['GN-1040', 'Bolt M6 × 25, class 8.8', 'D3-01', 60, 15, 120, 50],
  ['GN-1041', 'Bolt M8 × 35, class 8.8', 'D3-02', 90, 25, 90, 40],
  ['GN-1042', 'Bolt M8 × 55, class 10.9', 'D3-03', 140, 50, 40, 20],
  ['GN-1043', 'Stud M8 × 45 with nut, exhaust', 'D3-04', 290, 110, 16, 8],
  ['GN-1050', 'Woodruff key, 4 × 6.5', 'D3-05', 240, 80, 18, 8],
  ['GN-1060', 'Tine, right, 14 in tiller', 'E1-01', 2150, 1190, 4, 2],
  ['GN-1061', 'Tine, left, 14 in tiller', 'E1-02', 2150, 1190, 4, 2],
  ['GN-1062', 'Mower blade, 20 in', 'E1-03', 2390, 1280, 6, 3],
  ['GN-1063', 'Mower blade, 18 in', 'E1-04', 2190, 1160, 3, 3],
  ['GN-1064', 'Deck belt, 42 and 48 in', 'E1-05', 3690, 2080, 2, 2],
  ['GN-1065', 'Auger belt, snow thrower', 'E1-06', 2480, 1340, 2, 2],
  ['GN-1066', 'Shear pin with clip', 'E1-07', 180, 60, 40, 20],
  ['GN-1070', 'Battery 12 V, 230 A', 'E2-01', 6490, 4280, 1, 2],
  ['GN-1071', 'Throttle cable, universal', 'E2-02', 1490, 740, 3, 2],
  ['GN-1072', 'Stop switch with lead', 'E2-03', 980, 430, 5, 3],
] as const satisfies readonly Row[];

const SHELVES = {
  'Prairie Line Engine Supply': [...OSTREL, ...BROCKVANE],
  'Calder & Finch Engine Parts': [...VARNOCK, ...KESTWICK],
  'Northbend Two-Stroke': PELLABY,
  'Ferry Street Wholesale': GENERAL,
} as const satisfies Record<string, readonly Row[]>;

export interface DemoPart {
  number: PartNumber;
  description: string;
  bin: string;
  price: number;
  cost: number;
  supplier: SupplierName;
  stock: number;
  reorderAt: number;
  barcode: string;
}

export type SupplierName = keyof typeof SHELVES;

type Shelf = (typeof SHELVES)[keyof typeof SHELVES];
export type PartNumber = Shelf[number][0];

/** Some hundred parts of invented makers, with bins, costs, prices and what is on the shelf. */
export const DEMO_PARTS: readonly DemoPart[] = (Object.keys(SHELVES) as SupplierName[]).flatMap(
  (supplier) => {
    const rows: Shelf = SHELVES[supplier];
    return rows.map(([number, description, bin, price, cost, stock, reorderAt]) => ({
      number,
      description,
      bin,
      price,
      cost,
      supplier,
      stock,
      reorderAt,
      barcode: number.replaceAll('-', ''),
    }));
  },
);

/** @throws Error when no part has the number: a slip in the stories */
export function demoPart(number: PartNumber): DemoPart {
  const part = DEMO_PARTS.find((each) => each.number === number);
  if (part === undefined) throw new Error(`No part ${number} in the invented stock.`);
  return part;
}
