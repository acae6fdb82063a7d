import {
  IconBook2,
  IconBuildingStore,
  IconCalendarEvent,
  IconClipboardList,
  IconClock,
  IconPackages,
  IconRulerMeasure,
  IconUsers,
  type TablerIcon,
} from '@tabler/icons-react';

interface RailEntry {
  to: string;
  label: string;
  icon: TablerIcon;
  /** Addresses that belong to it besides its own. */
  also: readonly string[];
}

/** The rail, top to bottom, a list for each group. A job's bench and till are reached from the job. */
export const RAIL: readonly { name: string; entries: readonly RailEntry[] }[] = [
  {
    name: 'Counter',
    entries: [
      { to: '/', label: 'The day', icon: IconCalendarEvent, also: [] },
      { to: '/jobs', label: 'Jobs', icon: IconClipboardList, also: ['/job/'] },
      { to: '/customers', label: 'Customers', icon: IconUsers, also: ['/customer/'] },
    ],
  },
  {
    name: 'Bench',
    entries: [
      { to: '/spec-book', label: 'Spec book', icon: IconBook2, also: ['/spec-book/'] },
      { to: '/gauges', label: 'Gauges', icon: IconRulerMeasure, also: ['/gauge/'] },
    ],
  },
  {
    name: 'Stores and office',
    entries: [
      { to: '/parts', label: 'Parts', icon: IconPackages, also: ['/part/', '/parts/'] },
      { to: '/hours', label: 'Hours', icon: IconClock, also: [] },
      { to: '/office', label: 'Office', icon: IconBuildingStore, also: ['/office/'] },
    ],
  },
];

/** Whether the address shown belongs to an entry of the rail. */
export function belongsTo(entry: RailEntry, pathname: string): boolean {
  return pathname === entry.to || entry.also.some((start) => pathname.startsWith(start));
}
