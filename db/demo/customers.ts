import type { ReachBy } from '../../shared/work/vocabulary.ts';

export interface DemoCustomer {
  name: string;
  phone: string;
  email?: string;
  address?: string;
  reachBy?: ReachBy;
  note?: string;
}

/** Invented customers; their names are written in the alphabets that customers have. */
export const DEMO_CUSTOMERS = {
  lucja: {
    name: 'Łucja Żółkiewska',
    phone: '(309) 555-0107',
    email: 'lucja@zolkiewska.example',
    address: '42 Orchard Bluff\nHalden Ferry, Illinois',
    reachBy: 'text',
  },
  hakon: {
    name: 'Håkon Ødegård',
    phone: '(309) 555-0113',
    address: '7 Sawyer’s Bend\nCarrow Point, Illinois',
    note: 'Up before five; call early.',
  },
  eleni: {
    name: 'Ελένη Παπαδοπούλου',
    phone: '(309) 555-0118',
    email: 'eleni@papadopoulou.example',
    address: '260 Quay Street\nHalden Ferry, Illinois',
    reachBy: 'e-mail',
  },
  hanako: {
    name: '山田 花子',
    phone: '(309) 555-0121',
    email: 'hanako@yamada.example',
    address: '15 Linden Terrace\nHalden Ferry, Illinois',
    reachBy: 'e-mail',
  },
  orchard: {
    name: 'Cedar Hollow Orchard',
    phone: '(309) 555-0126',
    email: 'yard@cedarhollow.example',
    address: '3100 Old Ferry Turnpike\nCarrow Point, Illinois',
    note: 'Ask for Priya in the yard. Picks up on Fridays.',
  },
  brigade: {
    name: 'Carrow Point Volunteer Fire Brigade',
    phone: '(309) 555-0129',
    email: 'station@carrowpoint.example',
    address: '1 Station Lane\nCarrow Point, Illinois',
    note: 'Pump and generator go ahead of other work.',
  },
  desmond: {
    name: 'Desmond Achterberg',
    phone: '(309) 555-0134',
    address: '88 Ridgeway\nHalden Ferry, Illinois',
  },
  bjork: {
    name: 'Björk Sveinsdóttir',
    phone: '(309) 555-0136',
    email: 'bjork@sveinsdottir.example',
    address: '19 Icehouse Lane\nHalden Ferry, Illinois',
    reachBy: 'text',
  },
  olena: {
    name: 'Олена Ковальчук',
    phone: '(309) 555-0139',
    address: '5 Sunflower Court\nHalden Ferry, Illinois',
    reachBy: 'text',
  },
  beatriz: {
    name: 'Beatriz Nunes-Carvalho',
    phone: '(309) 555-0145',
    email: 'clean@nunescarvalho.example',
    address: '401 Depot Street, unit 6\nHalden Ferry, Illinois',
    note: 'Washes shop fronts for a living: a machine down is a day lost.',
  },
  thaddeus: {
    name: 'Thaddeus Oyelaran',
    phone: '(309) 555-0151',
    address: '12 Speedwell Drive\nCarrow Point, Illinois',
    reachBy: 'text',
  },
  mai: {
    name: 'Nguyễn Thị Mai',
    phone: '(309) 555-0158',
    address: '230 Linden Terrace\nHalden Ferry, Illinois',
  },
  walter: {
    name: 'Walter Prudhomme',
    phone: '(309) 555-0163',
    address: '1 County Road 9\nCarrow Point, Illinois',
    note: 'Hard of hearing: let it ring.',
  },
  fionnuala: {
    name: 'Fionnuala Ní Bhriain',
    phone: '(309) 555-0170',
    email: 'fionnuala@nibhriain.example',
    address: '77 Hawthorn Row\nHalden Ferry, Illinois',
  },
} as const satisfies Record<string, DemoCustomer>;

export type CustomerKey = keyof typeof DEMO_CUSTOMERS;
