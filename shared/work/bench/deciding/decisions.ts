/** What can be decided on, once an engine is stripped and measured. */
export const DECISION_SUBJECTS = [
  'cylinder',
  'piston',
  'rings',
  'crankshaft',
  'connecting-rod',
  'valves',
  'valve-springs',
  'valve-guides',
  'valve-seats',
  'head',
  'coil',
  'engine',
] as const;
export type DecisionSubject = (typeof DECISION_SUBJECTS)[number];

export const DECISION_SUBJECT_LABELS: Record<DecisionSubject, string> = {
  cylinder: 'Cylinder bore',
  piston: 'Piston',
  rings: 'Piston rings',
  crankshaft: 'Crankshaft',
  'connecting-rod': 'Connecting rod',
  valves: 'Valves',
  'valve-springs': 'Valve springs',
  'valve-guides': 'Valve guides',
  'valve-seats': 'Valve seats',
  head: 'Cylinder head',
  coil: 'Ignition coil',
  engine: 'The engine as a whole',
};

export const DECISION_CHOICES = [
  'reuse',
  'hone',
  'next-oversize',
  'undersize',
  'resurface',
  'reface',
  'lap',
  'cut',
  'ream',
  'file',
  'replace',
  'stop',
] as const;
export type DecisionChoice = (typeof DECISION_CHOICES)[number];

export const DECISION_CHOICE_LABELS: Record<DecisionChoice, string> = {
  reuse: 'Reuse',
  hone: 'Hone',
  'next-oversize': 'Next oversize',
  undersize: 'Undersize',
  resurface: 'Resurface',
  reface: 'Reface',
  lap: 'Lap',
  cut: 'Cut',
  ream: 'Ream',
  file: 'File',
  replace: 'Replace',
  stop: 'Stop: not worth it',
};
