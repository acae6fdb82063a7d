import type { Shop } from '../../shared/contract/office.ts';

/** The invented shop: town, street and numbers are made up; 555-01xx belongs to no telephone. */
export const DEMO_SHOP: Shop = {
  name: 'Halden Ferry Engine Works',
  address: '118 Mill Race Road\nHalden Ferry, Illinois',
  phone: '(309) 555-0142',
  email: 'desk@haldenferry.example',
  taxNumber: '0044-7182',
  currency: 'USD',
  locale: 'en-US',
  timeZone: 'America/Chicago',
  paperSize: 'Letter',
  country: 'US',
  rounding: 'half-up',
  taxBasis: 'invoice',
  taxes: [
    {
      name: 'Sales tax',
      ratePpm: 62_500,
      kinds: ['part', 'supplies'],
      place: '',
      from: null,
      until: null,
    },
  ],
  labourRate: 8400,
  bothUnits: true,
  warranty:
    'We stand by this work for 90 days from handover: parts that we fitted and the labour to fit them again. ' +
    'Stale fuel, missing oil, a bent blade spindle or work by others is not covered. ' +
    'Bring the machine and this page.',
  claimTerms: [
    'The machine is handed out to whoever brings this ticket, or to the customer in person.',
    'We call before we go past the spending limit written above.',
    'The diagnosis fee is credited when the work is done here.',
    'Machines not collected within 30 days of our call may cost storage, as local law allows.',
  ].join('\n'),
  estimateTerms: [
    'What turns up once the engine is open is put to you before it is done.',
    'Measurements are recorded with the gauge that took them, and you get them on the work order.',
    'This estimate holds for 30 days; prices of parts on order may change after that.',
  ].join('\n'),
  invoiceTerms: [
    'Due when the machine is collected. Cash, card, transfer or cheque.',
    'Old parts are yours if you ask for them within seven days.',
  ].join('\n'),
};
